package streamwright.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.Rule;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** A show that is sequenced already: each lamp stays at its channel, and a null at one that lights no lamp. */
final class KeptChannelRules {
    private final Survey survey;
    private final Faults faults;
    /** By controller: the last channel of each prop by its first. */
    private final Map<String, TreeMap<Long, Long>> used = new HashMap<>();

    private KeptChannelRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
        survey.yard.props().forEach(this::use);
    }

    static void audit(Survey survey, Faults faults) {
        if (!survey.yard.keepChannels()) {
            return;
        }
        KeptChannelRules rules = new KeptChannelRules(survey, faults);
        for (SeenStream stream : survey.streams) {
            for (Segment segment : stream.segments()) {
                rules.home(stream.jack().controller(), segment.home(), segment.about());
                rules.kept(stream, segment);
                rules.nulls(stream, segment);
            }
        }
        survey.plan.boards().forEach(rules::lines);
    }

    private void use(Prop prop) {
        List<Controller> controllers = survey.yard.controllers();
        String home = prop.controller() != null || controllers.isEmpty()
                ? prop.controller()
                : controllers.get(0).id();
        if (prop.channel().isPresent() && home != null) {
            long first = prop.channel().getAsInt();
            used.computeIfAbsent(home, id -> new TreeMap<>()).merge(first, first + channels(prop) - 1, Math::max);
        }
    }

    private static long channels(Prop prop) {
        PixelKind kind = prop.pixel();
        if (kind == null) {
            return prop.outputs();
        }
        long pixels = prop.strings().stream().mapToLong(PixelString::pixels).sum();
        return (prop.panel() == null ? pixels : prop.panel().pixels()) * kind.channels();
    }

    private void home(String on, @Nullable String home, String about) {
        if (home != null && !home.equals(on)) {
            faults.add(Rule.CHANNEL_KEEP, about, 0, 1, "on controller " + on + ", but its channel is one of " + home);
        }
    }

    /** Both what the plan says and what the stream sends must be the kept channel. */
    private void kept(SeenStream stream, Segment segment) {
        if (segment.kept().isEmpty()) {
            return;
        }
        long kept = segment.kept().getAsLong();
        OptionalLong own = stream.channelAt(segment.lit());
        long figure = segment.channel() == kept ? own.orElse(kept) : segment.channel();
        if (figure != kept) {
            faults.add(Rule.CHANNEL_KEEP, segment.about(), figure, kept, "at channel " + Say.other(figure, kept, ""));
        }
    }

    private void nulls(SeenStream stream, Segment segment) {
        OptionalLong first = stream.channelAt(segment.start());
        OptionalLong lit = stream.channelAt(segment.lit());
        TreeMap<Long, Long> taken = used.get(stream.jack().controller());
        if (taken == null || segment.start() >= segment.lit() || first.isEmpty() || lit.isEmpty()) {
            return;
        }
        Map.Entry<Long, Long> before = taken.lowerEntry(lit.getAsLong());
        if (before != null && before.getValue() >= first.getAsLong()) {
            String text = "its null pixels take channels " + first.getAsLong() + " to " + (lit.getAsLong() - 1)
                    + ", but channels " + before.getKey() + " to " + before.getValue() + " light a prop";
            faults.add(Rule.CHANNEL_KEEP, segment.about(), first.getAsLong(), before.getValue() + 1, text);
        }
    }

    private void lines(Board board) {
        Outputs outputs = board.outputs();
        for (Outputs.Line line : outputs == null ? List.<Outputs.Line>of() : outputs.lines()) {
            Prop prop = survey.index.props.get(line.prop());
            if (prop == null || prop.channel().isEmpty()) {
                continue;
            }
            String about = line.prop() + " output " + line.number();
            home(board.controller(), prop.controller(), about);
            long kept = prop.channel().getAsInt() + line.number() - 1L;
            if (line.channel() != kept) {
                faults.add(
                        Rule.CHANNEL_KEEP,
                        about,
                        line.channel(),
                        kept,
                        "at channel " + Say.other(line.channel(), kept, ""));
            }
        }
    }
}
