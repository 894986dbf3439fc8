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
 * @param way how the user might change it, or null where that is not the user's to change
 * @param place whether it says where things may be
 */
record Claim(
        String words, Consumer<YardDraft> without, @Nullable Candidate way, boolean place) {
    /** What can be let go, but not changed. */
    static Claim of(String words, Consumer<YardDraft> without) {
        return new Claim(words, without, null, false);
    }

    /** A figure; without it the yard has the loosest value. */
    static Claim of(Lever lever, @Nullable Candidate way) {
        return new Claim(
                lever.field() + " " + lever.said(lever.from()),
                draft -> lever.set().accept(draft, lever.loosest()),
                way,
                false);
    }

    Claim ofPlace() {
        return new Claim(words, without, way, true);
    }

    /** What the user would do to let it go. */
    Claim changed(String by) {
        return new Claim(words, without, Candidate.change(by, without), place);
    }

    /** The yard without all of these. */
    static Yard without(Yard yard, Collection<Claim> claims) {
        YardDraft draft = new YardDraft(yard);
        claims.forEach(claim -> claim.without.accept(draft));
        return draft.yard();
    }
}
