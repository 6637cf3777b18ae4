package io.github.classgraph;

/** The result of looking nowhere. */
public final class ScanResult implements AutoCloseable {
    public ClassInfoList getClassesImplementing(String interfaceName) {
        return new ClassInfoList();
    }

    @Override
    public void close() {}
}
