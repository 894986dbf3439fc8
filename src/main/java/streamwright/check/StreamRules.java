package streamwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import streamwright.plan.Cable;
import streamwright.plan.Rule;
import streamwright.plan.StreamUse;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

/** What a stream carries: one kind of pixels, no more than refresh in time, and what the cable lists. */
final class StreamRules {
    private static final BigDecimal MICROSECONDS = BigDecimal.valueOf(1_000_000);

    private final Survey survey;
    private final Faults faults;
    /** A board that is on no cable is told of elsewhere. */
    private final Set<Jack> cabled;

    private StreamRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
        cabled = survey.cables.stream().map(SeenCable::jack).collect(Collectors.toSet());
    }

    static void audit(Survey survey, Faults faults) {
        StreamRules rules = new StreamRules(survey, faults);
        survey.plan.cables().forEach(rules::listedOnce);
        for (SeenStream stream : survey.streams) {
            rules.listed(stream);
            rules.kind(stream);
            rules.limit(stream);
        }
    }

    private void listedOnce(Cable cable) {
        Map<Integer, Integer> times = new HashMap<>();
        cable.streams().forEach(use -> times.merge(use.stream(), 1, Integer::sum));
        times.forEach((stream, found) -> {
            if (found > 1) {
                String about = new Jack(cable.controller(), cable.jack()).label(stream);
                faults.add(Rule.PORT_STREAM, about, found, 1, "listed " + found + " times");
            }
        });
    }

    private void listed(SeenStream stream) {
        if (stream.segments().isEmpty()) {
            faults.add(Rule.PORT_STREAM, stream.label(), 0, 1, "listed, but carries nothing");
        } else if (stream.stated() == null && cabled.contains(stream.jack())) {
            faults.add(Rule.PORT_STREAM, stream.label(), 0, 1, "carries something, but its cable does not list it");
        }
    }

    private void kind(SeenStream stream) {
        Set<String> kinds = new TreeSet<>();
        for (Segment segment : stream.segments()) {
            if (segment.kind() != null) {
                kinds.add(segment.kind().name());
            }
        }
        StreamUse stated = stream.stated();
        // a stream of outputs alone may be of any kind, also of one that no prop of the yard has
        if (stated != null && !kinds.isEmpty()) {
            kinds.add(stated.pixel());
        }
        if (kinds.size() > 1) {
            String text = "has pixels of the kinds " + String.join(", ", kinds) + ", but a stream has one kind";
            faults.add(Rule.PIXEL_KIND, stream.label(), kinds.size(), 1, text);
        }
    }

    private void limit(SeenStream stream) {
        long pixels = stream.pixels();
        Controller controller = stream.controller();
        PixelKind kind = stream.kind();
        StreamUse stated = stream.stated();
        if (stated != null && stated.pixels() != pixels && !stream.segments().isEmpty()) {
            String text = "its last used pixel is said to be " + Say.other(stated.pixels(), pixels, "");
            faults.add(Rule.STREAM_LIMIT, stream.label(), stated.pixels(), pixels, text);
        }
        if (controller == null || kind == null) {
            return;
        }
        int limit = limit(survey.yard, controller, kind);
        if (pixels > limit) {
            String text = "has " + Say.over((double) pixels, limit, "pixels") + " that refresh "
                    + Say.number(survey.yard.frameRate()) + " times a second with "
                    + Say.number(survey.yard.spare() * 100) + " % kept spare";
            faults.add(Rule.STREAM_LIMIT, stream.label(), pixels, limit, text);
        }
        if (stated != null && stated.limit() != limit) {
            String text = "its limit is said to be " + Say.other(stated.limit(), limit, "pixels");
            faults.add(Rule.STREAM_LIMIT, stream.label(), stated.limit(), limit, text);
        }
    }

    /** Pixels that a stream may carry; in decimal figures, since a binary rounding could lose or win a pixel. */
    static int limit(Yard yard, Controller controller, PixelKind kind) {
        BigDecimal rate = BigDecimal.valueOf(yard.frameRate());
        BigDecimal quiet = BigDecimal.valueOf(kind.reset()).add(BigDecimal.valueOf(kind.prefix()));
        BigDecimal pixel = BigDecimal.valueOf(kind.bits()).multiply(BigDecimal.valueOf(kind.bitTime()));
        BigDecimal perSecond = pixel.multiply(rate);
        int most = controller.model().streamMost();
        BigDecimal inTime = perSecond.signum() <= 0
                ? BigDecimal.valueOf(most)
                : MICROSECONDS.subtract(quiet.multiply(rate)).divide(perSecond, 0, RoundingMode.FLOOR);
        BigDecimal share = BigDecimal.ONE.subtract(BigDecimal.valueOf(yard.spare()));
        return inTime.min(BigDecimal.valueOf(most))
                .max(BigDecimal.ZERO)
                .multiply(share)
                .setScale(0, RoundingMode.FLOOR)
                .intValue();
    }
}
