package streamwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/**
 * Makes props of drafts that were held against one another: equal strings become single ones, and a copy takes what it
 * does not say from its original.
 *
 * @param drafts by id, in the order of the file
 */
record Expansion(Map<String, PropDraft> drafts, boolean keepChannels) {
    List<Prop> props() {
        return drafts.values().stream().map(this::prop).toList();
    }

    private Prop prop(PropDraft draft) {
        PropDraft original = draft.copyOf() == null ? draft : drafts.getOrDefault(draft.copyOf(), draft);
        Integer channel = keepChannels ? original.channel() : null;
        return new Prop(
                draft.id(),
                draft.pixel() == null ? original.pixel() : draft.pixel(),
                draft.follow(),
                draft.tailGiven(),
                draft.copyOf(),
                channel == null ? OptionalInt.empty() : OptionalInt.of(channel),
                keepChannels ? original.controller() : null,
                strings(draft),
                draft.outputs(),
                draft.panel(),
                draft.at());
    }

    private static List<PixelString> strings(PropDraft draft) {
        List<PixelString> strings = new ArrayList<>();
        for (StringRun run : draft.runs()) {
            for (int i = 0; i < run.count(); i++) {
                strings.add(new PixelString(draft.id(), strings.size() + 1, run.pixels(), run.feed(), run.end()));
            }
        }
        return strings;
    }
}
