package streamwright.check;

import streamwright.plan.Rule;

/**
 * One broken rule.
 *
 * @param about the thing that breaks it, e.g. {@code tall tree 3}, {@code B1 port 2}, {@code shed jack 1 stream 4}
 * @param figure what the plan has; where a rule has no figure of its own, how many there are of a thing
 * @param limit what the rule allows or asks for, in the figure's unit
 * @param text one sentence with units
 */
public record Finding(Rule rule, String about, double figure, double limit, String text) {}
