/**
 * Stands in for the library of this name, which Tablesaw calls once to look for its own readers and writers of files on
 * the whole class path (about half a second at every start). Those readers and writers are not used here, so the answer
 * is: none. See {@code docs/decisions/0007-tablesaw-without-its-scan.md}.
 */
package io.github.classgraph;
