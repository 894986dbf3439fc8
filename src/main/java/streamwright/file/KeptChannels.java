package streamwright.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.yard.PixelKind;

/**
 * The channels of a show that is already sequenced.
 *
 * @param props by id
 * @param controllers their ids
 */
record KeptChannels(Map<String, PropDraft> props, List<String> controllers) {
    /** The channels of one prop, both ends included. */
    private record Window(PropDraft prop, long first, long last) {}

    void check(Problems problems) {
        Map<String, List<Window>> windows = new LinkedHashMap<>();
        for (PropDraft prop : props.values()) {
            PropDraft original = prop.copyOf() == null ? null : props.get(prop.copyOf());
            if (prop.copyOf() == null) {
                String home = home(prop, problems);
                Window window = window(prop, problems);
                if (home != null && window != null) {
                    windows.computeIfAbsent(home, key -> new ArrayList<>()).add(window);
                }
            } else if (original != null) {
                refuseOther(prop.channel(), original.channel(), prop.channelPlace(), original.id(), problems);
                refuseOther(prop.controller(), original.controller(), prop.controllerPlace(), original.id(), problems);
            }
        }
        windows.values().forEach(list -> refuseOverlap(list, problems));
    }

    private @Nullable String home(PropDraft prop, Problems problems) {
        String named = prop.controller();
        if (named != null && !controllers.contains(named)) {
            problems.add(prop.controllerPlace()
                    .wrong("the id of a controller" + Nearest.hint(named, controllers, problems)));
            return null;
        }
        if (named == null && controllers.size() > 1) {
            problems.add(prop.place(), "no field controller", "must name one, since the yard has several");
            return null;
        }
        return named != null ? named : controllers.isEmpty() ? null : controllers.get(0);
    }

    private static @Nullable Window window(PropDraft prop, Problems problems) {
        Integer first = prop.channel();
        if (first == null) {
            problems.add(prop.place(), "no field channel", "must have one, since channels are kept");
            return null;
        }
        return new Window(prop, first, first + channels(prop) - 1);
    }

    private static long channels(PropDraft prop) {
        PixelKind kind = prop.pixel();
        if (kind == null) {
            return prop.outputs();
        }
        long pixels = prop.panel() != null
                ? prop.panel().pixels()
                : prop.runs().stream()
                        .mapToLong(run -> (long) run.count() * run.pixels())
                        .sum();
        return pixels * kind.channels();
    }

    private static <T> void refuseOther(
            @Nullable T mine, @Nullable T theirs, Place place, String original, Problems problems) {
        if (mine != null && !mine.equals(theirs)) {
            problems.add(place.wrong("left out, or that of " + original + ": " + theirs));
        }
    }

    private static void refuseOverlap(List<Window> windows, Problems problems) {
        windows.sort(Comparator.comparingLong(Window::first));
        Window reaching = null;
        for (Window window : windows) {
            if (reaching != null && window.first() <= reaching.last()) {
                String wanted = "must not share channels with "
                        + reaching.prop().id() + ", which takes " + reaching.first() + " to " + reaching.last();
                String found = window.first() + " to " + window.last();
                problems.add(window.prop().channelPlace(), found, wanted);
            }
            if (reaching == null || window.last() > reaching.last()) {
                reaching = window;
            }
        }
    }
}
