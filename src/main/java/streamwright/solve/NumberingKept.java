package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Cable;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.solve.Numbers.StreamAt;

/** Streams whose strings keep their channels: the window and the places of what was there before follow from these. */
final class NumberingKept {
    private final Numbers numbers;

    /** Of strings, and of blocks and parts of panels with their slots, the channels that they had. */
    private final Map<String, Long> channels;

    NumberingKept(Numbers numbers) {
        this.numbers = numbers;
        channels = Lying.channels(numbers.old);
    }

    /** Whether all finds room. */
    boolean stream(int cable, StreamUse stream) {
        int width = numbers.kind(stream).channels();
        List<Lying> all = numbers.lying(cable, stream.stream());
        List<@Nullable Long> kept = new ArrayList<>();
        long begin = Long.MAX_VALUE;
        for (Lying each : all) {
            List<Long> starts = starts(each, width);
            if (starts.stream().distinct().count() > 1) {
                return false;
            }
            kept.add(starts.isEmpty() ? null : starts.get(0));
            begin = starts.isEmpty() ? begin : Math.min(begin, starts.get(0));
        }
        List<Long> others = others(cable, stream.stream());
        long window = begin;
        StreamUse was = numbers.before(cable, stream.stream());
        if (was != null && was.startChannel() <= begin && begin != Long.MAX_VALUE) {
            long before = was.startChannel();
            long first = begin;
            boolean taken = others.stream().anyMatch(each -> each >= before && each < first);
            window = taken ? begin : before;
        }
        List<Shelf.Thing> things = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Long start = kept.get(i);
            if (start != null && (start - window) % width != 0) {
                return false;
            }
            long wish = start == null ? Shelf.NOWHERE : (start - window) / width + 1;
            things.add(new Shelf.Thing(all.get(i).length(), wish, false, start != null));
        }
        long from = window;
        long room = others.stream()
                .filter(each -> each > from)
                .mapToLong(each -> (each - from) / width)
                .min()
                .orElse(stream.limit());
        Shelf.Placed placed =
                Shelf.place(things, 1, window == Long.MAX_VALUE ? stream.limit() : Math.min(room, stream.limit()));
        if (placed == null) {
            return false;
        }
        for (int i = 0; i < all.size(); i++) {
            numbers.starts.put(Numbers.place(all.get(i)), placed.at()[i]);
        }
        if (window != Long.MAX_VALUE) {
            numbers.windows.put(new StreamAt(cable, stream.stream()), window);
        }
        return true;
    }

    /** Where channels begin that the controller's other streams keep. */
    private List<Long> others(int cable, int stream) {
        List<Cable> cables = numbers.fresh.cables();
        List<Long> others = new ArrayList<>();
        for (int c = 0; c < cables.size(); c++) {
            if (!cables.get(c).controller().equals(cables.get(cable).controller())) {
                continue;
            }
            for (StreamUse each : cables.get(c).streams()) {
                if (c != cable || each.stream() != stream) {
                    int width = numbers.kind(each).channels();
                    numbers.lying(c, each.stream()).forEach(lying -> others.addAll(starts(lying, width)));
                }
            }
        }
        return others;
    }

    /** The channels at which the whole must begin, one for each part of it that keeps its own. */
    private List<Long> starts(Lying lying, int width) {
        List<Long> starts = new ArrayList<>();
        if (lying.port() == null) {
            Long channel = channels.get(lying.key());
            return channel == null ? List.of() : List.of(channel);
        }
        for (StringUse on : lying.port().strings()) {
            Long channel = channels.get(Lying.name(on));
            if (channel != null) {
                starts.add(channel - (on.firstPixel() - (long) lying.port().startPixel()) * width);
            }
        }
        return starts;
    }
}
