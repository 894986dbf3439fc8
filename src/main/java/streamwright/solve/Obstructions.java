package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import streamwright.physics.Ground;
import streamwright.plan.Rule;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/**
 * Plain arithmetic that proves a yard impossible before anything is searched: conditions that every plan meets, looked
 * at for each thing alone ({@link NeedsOfOne}, {@link Reaching}) and for all together ({@link NeedsOfAll}).
 */
public final class Obstructions {
    final Site site;
    private final List<Outcome.Obstruction> found = new ArrayList<>();

    Obstructions(Site site) {
        this.site = site;
    }

    /** What forbids every plan of a yard; empty where arithmetic alone finds nothing. */
    public static List<Outcome.Obstruction> of(Yard yard, Ground ground) {
        return of(new Site(yard, ground));
    }

    static List<Outcome.Obstruction> of(Site site) {
        Obstructions all = new Obstructions(site);
        if (new NeedsOfOne(all).find()) {
            new Reaching(all).find();
            new NeedsOfAll(all).find();
        }
        return all.found;
    }

    String label(int string) {
        Prop prop = site.yard.props().get(site.prop[string]);
        return site.strings[string].label(prop.several());
    }

    /** @param text with the places of {@code values}, as for {@link String#format} */
    void add(Rule rule, String about, double figure, double limit, String text, Object... values) {
        found.add(new Outcome.Obstruction(rule, about, figure, limit, String.format(Locale.ROOT, text, values)));
    }

    static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
