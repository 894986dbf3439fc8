package streamwright.file;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The props of a yard.
 *
 * @param drafts those that are right by themselves
 * @param ids of all, right or wrong, in their order
 */
record PropList(List<PropDraft> drafts, Set<String> ids) {
    PropList {
        drafts = List.copyOf(drafts);
        ids = Collections.unmodifiableSet(new LinkedHashSet<>(ids));
    }
}
