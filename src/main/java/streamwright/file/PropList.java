package streamwright.file;

import java.util.List;
import java.util.Set;

/**
 * The props of a yard.
 *
 * @param drafts those that are right by themselves
 * @param ids of all, right or wrong
 */
record PropList(List<PropDraft> drafts, Set<String> ids) {
    PropList {
        drafts = List.copyOf(drafts);
        ids = Set.copyOf(ids);
    }
}
