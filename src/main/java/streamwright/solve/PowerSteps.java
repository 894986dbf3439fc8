package streamwright.solve;

/**
 * How far power goes along a chain, in the steps of a dynamic programme: a port or an injection feeds one stretch of
 * pixels, and what is farther on needs an injection. Rounded so that no chain seems to need more than it does: an
 * injection counts as if it stood as far on as it may, and costs as if it stood at the begin of its string.
 */
final class PowerSteps {
    /** More than any chain has. */
    static final int ENDLESS = Integer.MAX_VALUE / 4;

    private final int[] steps;
    private final int[] most;
    private final int[] reach;

    /** The longest way behind the last injection that a chain can have. */
    final int longest;

    /**
     * @param steps whole ones of each item's pixels
     * @param pixels that each item's kind has in one stretch at most; 0 where none is ever too many
     * @param step pixels to a step
     * @param table steps that a port takes
     */
    PowerSteps(int[] steps, int[] pixels, int step, int table) {
        this.steps = steps;
        most = new int[steps.length];
        reach = new int[steps.length];
        int far = 0;
        for (int i = 0; i < steps.length; i++) {
            boolean endless = pixels[i] == 0 || pixels[i] / step >= table;
            most[i] = endless ? ENDLESS : pixels[i] / step;
            reach[i] = endless ? ENDLESS : (pixels[i] + step - 1) / step;
            far = endless ? far : Math.max(far, reach[i]);
        }
        longest = far;
    }

    /** The fewest injections that an item needs behind so many steps of its stretch. */
    int least(int item, int since) {
        int all = since + steps[item];
        return all <= most[item] ? 0 : Math.max(1, (all + reach[item] - 1) / reach[item] - 1);
    }

    /** So many that none more would shorten the way behind the last. */
    int most(int item, int since) {
        return most[item] == ENDLESS ? 0 : (since + steps[item] + reach[item] - 1) / reach[item];
    }

    /** Steps behind the last of so many injections on an item, at the item's end. */
    int after(int item, int since, int injections) {
        return most[item] == ENDLESS ? 0 : Math.max(0, since + steps[item] - injections * reach[item]);
    }

    /**
     * Of each number of steps behind the last injection: raises what is known to what going on to an item and from there
     * wins. The fewer steps the more may be won: what an option allows behind some steps it allows behind fewer, and leaves
     * fewer then. So what wins no more at its best than is known at the longest way raises nothing.
     *
     * @param win by the item alone
     * @param injection what one on it costs
     * @param beyond what chains that end with it win, by the steps behind the last injection, from a place on
     * @param into what is raised, from a place on
     */
    void best(int item, double win, double injection, double[] beyond, int from, double[] into, int at) {
        int width = longest + 1;
        int last = at + longest;
        double best = beyond[from];
        if (win + best <= into[last]) {
            return;
        }
        int more = steps[item];
        if (most[item] == ENDLESS) {
            double all = win + best;
            for (int since = 0; since < width; since++) {
                into[at + since] = Math.max(into[at + since], all);
            }
            return;
        }
        int whole = Math.min(width, most[item] - more + 1);
        for (int since = 0; since < whole; since++) {
            into[at + since] = Math.max(into[at + since], win + beyond[from + since + more]);
        }
        int injectionsMost = most(item, longest);
        for (int injections = 1; injections <= injectionsMost; injections++) {
            double with = win - injections * injection;
            if (with + best <= into[last]) {
                return;
            }
            int back = more - injections * reach[item];
            int reset = Math.min(width, Math.max(0, 1 - back));
            double anew = with + best;
            for (int since = 0; since < reset; since++) {
                into[at + since] = Math.max(into[at + since], anew);
            }
            int end = Math.min(width, reach[item] - back + 1);
            for (int since = reset; since < end; since++) {
                into[at + since] = Math.max(into[at + since], with + beyond[from + since + back]);
            }
        }
    }
}
