package soundings.workbook;

/** What the sheets of one OOXML workbook share. */
record XlsxContext(SharedStrings strings, XlsxStyles styles, boolean from1904) {}
