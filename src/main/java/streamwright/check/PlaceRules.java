package streamwright.check;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import streamwright.plan.Board;
import streamwright.plan.Rule;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Spot;

/** Which boards there are, and where they hang. */
final class PlaceRules {
    private final Survey survey;
    private final Faults faults;

    private PlaceRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        PlaceRules rules = new PlaceRules(survey, faults);
        rules.places();
        rules.models();
        rules.count();
    }

    private void places() {
        Map<Spot, Integer> used = new LinkedHashMap<>();
        for (SeenBoard seen : survey.boards) {
            Spot place = seen.place();
            if (place == null) {
                faults.add(Rule.SPOT_MOST, seen.label(), 1, 0, nowhere(seen.board()));
                continue;
            }
            used.merge(place, 1, Integer::sum);
            if (!Places.same(place.at(), seen.board().at())) {
                String text = "said to be at " + said(seen.board()) + ", but the spot " + place.id() + " is elsewhere";
                faults.add(Rule.SPOT_MOST, seen.label(), 1, 0, text);
            }
        }
        used.forEach((place, boards) -> {
            if (boards > place.most() && place.id() != null) {
                String text = "has " + Say.over(boards, place.most(), "boards");
                faults.add(Rule.SPOT_MOST, place.id(), boards, place.most(), text);
            }
        });
    }

    private String nowhere(Board board) {
        if (!survey.yard.spotsNamed()) {
            return board.spot() == null
                    ? "at " + said(board) + ", where no string has its feed"
                    : "at the spot " + board.spot() + ", but the yard names no spots";
        }
        return board.spot() == null ? "names no spot" : "at " + board.spot() + ", but the yard has no such spot";
    }

    private static String said(Board board) {
        return "[" + Say.number(board.at().x()) + ", " + Say.number(board.at().y()) + ", "
                + Say.number(board.at().z()) + "]";
    }

    private void models() {
        Map<String, Integer> used = new HashMap<>();
        survey.boards.forEach(seen -> used.merge(seen.board().model(), 1, Integer::sum));
        used.forEach((model, boards) -> {
            BoardOffer offer = survey.index.offers.get(model);
            if (offer == null) {
                faults.add(Rule.BOARD_MOST, model, boards, 0, "a model that the yard does not offer");
            } else if (boards > offer.most()) {
                faults.add(Rule.BOARD_MOST, model, boards, offer.most(), Say.over(boards, offer.most(), "boards"));
            }
        });
    }

    private void count() {
        BoardCount count = survey.yard.boardCount();
        int boards = survey.boards.size();
        if (boards > count.most()) {
            faults.add(
                    Rule.BOARD_COUNT, "yard", boards, count.most(), "has " + Say.over(boards, count.most(), "boards"));
        } else if (boards < count.least()) {
            faults.add(
                    Rule.BOARD_COUNT,
                    "yard",
                    boards,
                    count.least(),
                    "has " + Say.under(boards, count.least(), "boards"));
        }
    }
}
