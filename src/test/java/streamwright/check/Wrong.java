package streamwright.check;

import streamwright.plan.Rule;

/**
 * A scene with one thing wrong.
 *
 * @param about the thing that is to be told of
 */
record Wrong(Rule rule, String about, Scene scene) {
    @Override
    public String toString() {
        return rule.label() + " of " + about;
    }
}
