package streamwright.reason;

import streamwright.layout.Layout;
import streamwright.yard.Yard;

/**
 * A choice not taken, carried out.
 *
 * @param what in words, as the subject of a sentence
 * @param yard the same yard, unless it is the yard's own settings that are changed
 * @param layout with what hangs on the decision moved along
 * @param cost of what follows from the layout, before any audit
 * @param suspect whether it is seen to break a rule before any audit, so that the audit can wait
 */
record Alternative(String what, Yard yard, Layout layout, double cost, boolean suspect) {
    Alternative named(String other) {
        return new Alternative(other, yard, layout, cost, suspect);
    }

    Alternative suspected(boolean also) {
        return new Alternative(what, yard, layout, cost, suspect || also);
    }
}
