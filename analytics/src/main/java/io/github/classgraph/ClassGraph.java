package io.github.classgraph;

/** Finds nothing, at once. The methods are the ones Tablesaw 0.44.4 calls. */
public class ClassGraph {
    public ClassGraph enableAllInfo() {
        return this;
    }

    public ClassGraph whitelistPackages(String... packages) {
        return this;
    }

    public ClassGraph acceptPackages(String... packages) {
        return this;
    }

    public ScanResult scan() {
        return new ScanResult();
    }
}
