package soundings.findings;

/** What a report rests on: the file's name and SHA-256, the setup's name (empty: none), the options given, the program's version. */
public record Provenance(String file, String sha256, String setupFile, String options, String version) {}
