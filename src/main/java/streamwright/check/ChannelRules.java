package streamwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.Rule;
import streamwright.plan.StreamUse;
import streamwright.yard.Controller;

/** Channels: those that the controller and its universes have, and where the plan says. */
final class ChannelRules {
    /** Highest universe of ANSI E1.31-2018, 9.1.1. */
    private static final long UNIVERSE_MOST = 63_999;

    private final Survey survey;
    private final Faults faults;

    private ChannelRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        ChannelRules rules = new ChannelRules(survey, faults);
        for (SeenStream stream : survey.streams) {
            Controller controller = stream.controller();
            StreamUse stated = stream.stated();
            if (controller != null && stated != null) {
                rules.range(stream, controller);
                rules.universe(stream, stated, controller);
            }
            stream.segments().forEach(segment -> rules.stated(stream, segment));
        }
        survey.plan.boards().forEach(rules::lines);
        if (!survey.yard.keepChannels()) {
            rules.overlaps();
        }
    }

    private void range(SeenStream stream, Controller controller) {
        long first = stream.startChannel().orElseThrow();
        long last = last(stream, first);
        long most = controller.model().channelMost();
        long universe = universe(controller, last);
        if (first < controller.firstChannel()) {
            String text = "starts at channel " + first + ", but the first of " + controller.id() + " is "
                    + controller.firstChannel();
            faults.add(Rule.CHANNEL_RANGE, stream.label(), first, controller.firstChannel(), text);
        } else if (last > most) {
            String text = "ends at channel " + last + ", but the last of " + controller.id() + " is " + most;
            faults.add(Rule.CHANNEL_RANGE, stream.label(), last, most, text);
        } else if (universe > UNIVERSE_MOST) {
            String text = "ends in universe " + universe + ", but the last that exists is " + UNIVERSE_MOST;
            faults.add(Rule.CHANNEL_RANGE, stream.label(), universe, UNIVERSE_MOST, text);
        }
    }

    private static long last(SeenStream stream, long first) {
        return first + stream.pixels() * stream.width() - 1;
    }

    private void universe(SeenStream stream, StreamUse stated, Controller controller) {
        long first = stream.startChannel().orElseThrow();
        long universe = universe(controller, first);
        long slot = slot(controller, first);
        if (stated.universe() != universe) {
            String text = "said to start in universe " + Say.other(stated.universe(), universe, "");
            faults.add(Rule.CHANNEL_RANGE, stream.label(), stated.universe(), universe, text);
        } else if (stated.slot() != slot) {
            String text = "said to start at slot " + Say.other(stated.slot(), slot, "");
            faults.add(Rule.CHANNEL_RANGE, stream.label(), stated.slot(), slot, text);
        }
    }

    static long universe(Controller controller, long channel) {
        return controller.firstUniverse() + Math.floorDiv(channel - controller.firstChannel(), slots(controller));
    }

    static long slot(Controller controller, long channel) {
        return 1 + Math.floorMod(channel - controller.firstChannel(), slots(controller));
    }

    private static long slots(Controller controller) {
        return Math.max(1, controller.model().universeSlots());
    }

    /** In a show that keeps its channels a wrong one breaks that rule instead. */
    private void stated(SeenStream stream, Segment segment) {
        OptionalLong own = stream.channelAt(segment.lit());
        if (segment.kept().isEmpty() && own.isPresent() && segment.channel() != own.getAsLong()) {
            String text = "said to be at channel " + Say.other(segment.channel(), own.getAsLong(), "");
            faults.add(Rule.CHANNEL_RANGE, segment.about(), segment.channel(), own.getAsLong(), text);
        }
    }

    private void lines(Board board) {
        Outputs outputs = board.outputs();
        if (outputs == null) {
            return;
        }
        for (Outputs.Line line : outputs.lines()) {
            long own = outputs.channel() + line.output() - 1;
            if (line.channel() != own) {
                String text = "said to be at channel " + Say.other(line.channel(), own, "");
                faults.add(Rule.CHANNEL_RANGE, board.id() + " output " + line.output(), line.channel(), own, text);
            }
        }
    }

    private void overlaps() {
        Map<String, List<SeenStream>> byController = new LinkedHashMap<>();
        for (SeenStream stream : survey.streams) {
            if (stream.startChannel().isPresent() && stream.pixels() > 0) {
                byController
                        .computeIfAbsent(stream.jack().controller(), id -> new ArrayList<>())
                        .add(stream);
            }
        }
        for (List<SeenStream> streams : byController.values()) {
            streams.sort(
                    Comparator.comparingLong(stream -> stream.startChannel().orElseThrow()));
            SeenStream reaching = streams.get(0);
            long reached = last(reaching, reaching.startChannel().orElseThrow());
            for (SeenStream next : streams.subList(1, streams.size())) {
                long first = next.startChannel().orElseThrow();
                long last = last(next, first);
                if (first <= reached) {
                    String text = "starts at channel " + first + ", but " + reaching.label() + " ends at " + reached;
                    faults.add(Rule.CHANNEL_OVERLAP, next.label(), first, reached + 1, text);
                }
                if (last > reached) {
                    reaching = next;
                    reached = last;
                }
            }
        }
    }
}
