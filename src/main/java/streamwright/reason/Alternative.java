package streamwright.reason;

import streamwright.layout.Layout;
import streamwright.yard.Yard;

/**
 * A choice not taken, carried out.
 *
 * @param what in words, as the subject of a sentence
 * @param yard the same yard, unless it is the yard's own settings that are changed
 * @param layout with what hangs on the decision moved along
 */
record Alternative(String what, Yard yard, Layout layout) {}
