/** Stands in for packages that a library would pull in for features that Legwork never calls. */
export default null;
