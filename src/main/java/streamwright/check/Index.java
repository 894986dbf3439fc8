package streamwright.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The yard's things by name. */
final class Index {
    final Map<String, Controller> controllers;
    final Map<String, BoardOffer> offers;
    final Map<String, Prop> props;
    final Map<String, PixelKind> kinds = new HashMap<>();
    private final Map<StringKey, Long> keptChannels = new HashMap<>();

    Index(Yard yard) {
        controllers = byName(yard.controllers(), Controller::id);
        offers = byName(yard.boards(), offer -> offer.model().name());
        props = byName(yard.props(), Prop::id);
        for (Prop prop : yard.props()) {
            PixelKind kind = prop.pixel();
            if (kind != null) {
                kinds.putIfAbsent(kind.name(), kind);
            }
            if (yard.keepChannels() && kind != null && prop.channel().isPresent()) {
                keep(prop, kind);
            }
        }
    }

    private static <T> Map<String, T> byName(List<T> things, Function<T, String> name) {
        Map<String, T> map = new HashMap<>();
        things.forEach(thing -> map.putIfAbsent(name.apply(thing), thing));
        return map;
    }

    private void keep(Prop prop, PixelKind kind) {
        long next = prop.channel().getAsInt();
        for (PixelString string : prop.strings()) {
            keptChannels.put(new StringKey(prop.id(), string.number()), next);
            next += (long) string.pixels() * kind.channels();
        }
    }

    /** Null where the yard has no such string. */
    @Nullable
    PixelString string(StringKey key) {
        Prop prop = props.get(key.prop());
        if (prop == null || key.number() < 1 || key.number() > prop.strings().size()) {
            return null;
        }
        return prop.strings().get(key.number() - 1);
    }

    /** As people call it, where the yard has it. */
    String label(StringKey key) {
        Prop prop = props.get(key.prop());
        PixelString string = string(key);
        return prop == null || string == null ? key.prop() + " " + key.number() : string.label(prop.several());
    }

    /** Channel of a string's first pixel in a show that keeps its channels. */
    OptionalLong kept(StringKey key) {
        Long channel = keptChannels.get(key);
        return channel == null ? OptionalLong.empty() : OptionalLong.of(channel);
    }

    /** The string whose picture a string shows: that of the original where the prop is a copy. */
    StringKey picture(StringKey key) {
        Prop prop = props.get(key.prop());
        String original = prop == null ? null : prop.copyOf();
        return original == null ? key : new StringKey(original, key.number());
    }
}
