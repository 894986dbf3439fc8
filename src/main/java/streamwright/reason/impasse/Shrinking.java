package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import streamwright.yard.Yard;

/**
 * Lets go of whatever a yard without a plan can be without and still have none. What is left is a clash: for each claim
 * that stays there was a plan when it alone was let go of all that had not gone by then.
 */
final class Shrinking {
    private final Oracle oracle;
    private final Yard yard;
    private final Set<Claim> gone = new LinkedHashSet<>();

    /** Those that stay because the time did not suffice to say whether they can go. */
    private final Set<Claim> open = new LinkedHashSet<>();

    /** @param yard without a plan, which is proved */
    Shrinking(Oracle oracle, Yard yard) {
        this.oracle = oracle;
        this.yard = yard;
    }

    /**
     * Those of some claims that must stay, in their order.
     *
     * @param suspect whether a claim is likely to stay; the others are tried first, and all at once
     */
    List<Claim> needed(List<Claim> claims, Predicate<Claim> suspect) {
        List<Claim> others = claims.stream().filter(suspect.negate()).toList();
        List<Claim> stay = new ArrayList<>(others.isEmpty() || goes(others) ? List.of() : needed(others));
        stay.addAll(needed(claims.stream().filter(suspect).toList()));
        return claims.stream().filter(stay::contains).toList();
    }

    /** Those of some claims that must stay, in their order: tried by halves. */
    List<Claim> needed(List<Claim> claims) {
        if (claims.size() <= 1) {
            return one(claims);
        }
        List<Claim> stay = new ArrayList<>();
        int half = claims.size() / 2;
        for (List<Claim> part : List.of(claims.subList(0, half), claims.subList(half, claims.size()))) {
            if (part.size() == 1 || !goes(part)) {
                stay.addAll(needed(part));
            }
        }
        return stay;
    }

    private List<Claim> one(List<Claim> claims) {
        if (claims.isEmpty()) {
            return claims;
        }
        Claim claim = claims.get(0);
        Oracle.Answer answer = without(claims);
        if (answer == Oracle.Answer.NONE) {
            gone.add(claim);
            return List.of();
        }
        if (answer == Oracle.Answer.OPEN) {
            open.add(claim);
        }
        return claims;
    }

    private boolean goes(List<Claim> claims) {
        if (without(claims) != Oracle.Answer.NONE) {
            return false;
        }
        gone.addAll(claims);
        return true;
    }

    private Oracle.Answer without(List<Claim> claims) {
        List<Claim> all = new ArrayList<>(gone);
        all.addAll(claims);
        return oracle.of(Claim.without(yard, all));
    }

    /**
     * Looks once more at those claims of a clash of which nothing was found out, now that all others are gone.
     *
     * @return those of the clash that stay
     */
    List<Claim> confirmed(List<Claim> clash) {
        Set<Claim> again = Set.copyOf(open);
        open.clear();
        List<Claim> stay = new ArrayList<>();
        for (Claim claim : clash) {
            stay.addAll(again.contains(claim) ? one(List.of(claim)) : List.of(claim));
        }
        return stay;
    }

    boolean open(Claim claim) {
        return open.contains(claim);
    }
}
