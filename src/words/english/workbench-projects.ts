// Written by `npm run words`, save where each comes from.
export const workbenchProjects = {
  'A body': 'plain',
  'A body that can’t be read here': 'plain',
  'A body that is kept apart can be put into any project. None is kept yet.': 'plain',
  'A project': 'plain',
  'A project that can’t be read here': 'plain',
  American: 'plain',
  Bodies: 'plain',
  British: 'plain',
  'British: trousers, overlocker. American: pants, serger. The page loads again, and your work is kept.': 'trade',
  Canadian: 'plain',
  'Copied. Whoever has the link has the whole project; nobody else gets it.': 'plain',
  'Copy a link': 'plain',
  'Copy the link from here.': 'plain',
  Duplicate: 'plain',
  'Everything here is kept in this browser, on this computer only.': 'plain',
  'Everything here is kept in this browser, on this computer only. Legwork works here without a network, too.':
    'ours: the name',
  'It is left as it is.': 'plain',
  'It is left as it was found.': 'plain',
  'It may come from a newer Legwork. It is left as it is.': 'ours: the name',
  'Keep this body': 'plain',
  'Licences of what Legwork is made of': 'ours: the name',
  'Link that holds the project': 'plain',
  'No other project is kept here yet.': 'plain',
  'Open a file': 'plain',
  'Other projects': 'plain',
  'Set aside, because it can’t be read here:': 'plain',
  'The open project': 'plain',
  'This project is now drafted for “{0}”.': 'plain', // {0} own(name)
  'What is kept': 'plain',
  'Whose body this project is for': 'plain',
  'hip {0}': 'plain', // {0} mm(figures.hipGirth)
  'kept {0}': 'plain', // {0} own(ago(Date.now() - one.savedAt))
  open: 'plain',
  'open {0}': 'plain', // {0} own(one.name)
  'put into this project': 'plain',
  'put into this project {0}': 'plain', // {0} own(one.body.label)
  'put it back': 'plain',
  remove: 'plain',
  'remove {0}': 'plain', // {0} own(one.body.label)
  'save what is there': 'plain',
  '“{0}” is off the list.': 'plain', // {0} own(again.name)
} as const;
