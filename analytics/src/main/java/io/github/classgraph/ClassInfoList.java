package io.github.classgraph;

import java.util.List;

/** No classes. */
public final class ClassInfoList {
    public List<String> getNames() {
        return List.of();
    }
}
