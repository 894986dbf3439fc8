package streamwright.file;

import org.jspecify.annotations.Nullable;

/** A node together with the way that led to it, so that a problem can name both. */
record Place(String file, Node node, @Nullable Place parent, String step) {
    static Place root(String file, Node node) {
        return new Place(file, node, null, "");
    }

    Place item(int index, Node item) {
        return new Place(file, item, this, "[" + index + "]");
    }

    Place field(String name, Node value) {
        return new Place(file, value, this, name);
    }

    String path() {
        if (parent == null) {
            return step;
        }
        String before = parent.path();
        return before.isEmpty() || step.startsWith("[") ? before + step : before + "." + step;
    }

    Problem problem(String found, String wanted) {
        return new Problem(file, node.line(), node.column(), path(), found, wanted);
    }

    /** A problem of this value itself: what stands here, and what must. */
    Problem wrong(String wanted) {
        return problem(node.described(), "must be " + wanted);
    }
}
