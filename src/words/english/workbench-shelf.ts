// Written by `npm run words`, save where each comes from.
export const workbenchShelf = {
  ', copy': 'plain',
  'Save the project as a file now, then load the page again.': 'plain',
  'The link': 'plain',
  'The other tab is closed: “{0}” is saved from this tab again.': 'plain', // {0} own(name)
  'The project that was open last can’t be read here. It is left as it is, and listed under Projects with all others.':
    'plain',
  'There is no room left on this computer: your work goes on, but save it as a file to keep it.': 'plain',
  'This browser is slow to give back what it keeps: your projects are listed under Projects when it does.': 'plain',
  'This browser keeps nothing for Legwork: your work goes on, but save it as a file to keep it.': 'ours: the name',
  'This link {0} Nothing here was changed.': 'plain', // {0} why
  'This project is too long for a link: {0} letters, of which {1} arrive safely. Save it as a file instead.': 'plain', // {0} number(link.length, 0), {1} number(LONGEST_LINK, 0)
  'What is on the table is now a project of its own: “{0}”.': 'plain', // {0} own(name)
  'Your work is kept on this computer again.': 'plain',
  'a copy of a project': 'plain',
  'a copy of “{0}”': 'plain', // {0} own(read.project.name)
  'about to be kept': 'plain',
  'an example: change it and it is kept': 'plain',
  'at some time': 'plain',
  'holds more than any project that fits into a link, {0} kB, and was not unpacked.': 'plain', // {0} number(MOST_UNPACKED / 1000, 0)
  'is incomplete. Was the link cut off?': 'plain',
  'just now': 'plain',
  'keeping your work': 'plain',
  'kept on this computer, {0}': 'plain', // {0} own(ago(now - at))
  'not kept: no room on this computer': 'plain',
  'not kept: save it as a file': 'plain',
  'open in another tab': 'plain',
  'opening a link': 'plain',
  'some of what could be undone in a project': 'plain',
  'some of what could be undone in “{0}”': 'plain', // {0} own(read.project.name)
  'take a copy now': 'plain',
  'what was noted when a page was closed': 'plain',
  '{0} can’t be read. It is set aside as it is, and listed under Projects.': 'plain', // {0} all(what.map((one) => say`${own(one)}`))
  '“{0}” came with the link, and is now a project of yours.': 'plain', // {0} own(result.value.name)
  '“{0}” is open in another tab, which saves it. What you change here goes into a copy of its own.': 'plain', // {0} own(name)
  '“{0}” is open.': 'plain', // {0} own(name)
  '“{0}” was changed in another tab, too: what you changed of it here is now “{1}”.': 'plain', // {0} own(name), {1} own(copy)
} as const;
