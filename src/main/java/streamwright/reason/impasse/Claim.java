package streamwright.reason.impasse;

import java.util.Collection;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Yard;

/**
 * Something that a yard asks for and that could be let go: a limit, or a thing to be lit.
 *
 * @param words as the yard file has it, e.g. {@code frameRate 50} or {@code prop gable}
 * @param without lets it go
 * @param lever how it could be loosened by degrees, or null
 */
record Claim(
        String words, Consumer<YardDraft> without, @Nullable Lever lever) {
    static Claim of(String words, Consumer<YardDraft> without) {
        return new Claim(words, without, null);
    }

    /** A figure; without it the yard has the loosest value. */
    static Claim of(Lever lever) {
        return new Claim(
                lever.field() + " " + lever.said(lever.from()),
                draft -> lever.set().accept(draft, lever.loosest()),
                lever);
    }

    /** The yard without all of these. */
    static Yard without(Yard yard, Collection<Claim> claims) {
        YardDraft draft = new YardDraft(yard);
        claims.forEach(claim -> claim.without.accept(draft));
        return draft.yard();
    }
}
