package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.join.LetterFrame;

/**
 * Whose an island is, so that a decision about it can follow the letter.
 *
 * @param letter number of the letter in the text; -1 if there are no letters
 * @param number among the islands of that letter, from its top down and then along its baseline
 * @param turn   of the letter in radians
 */
record IslandOwner(int letter, int number, double turn) {

	/** The owners of islands that have their middles at these places. */
	static List<IslandOwner> of(List<Point> middles, SetText set, SetText placed) {
		int[] letters = middles.stream().mapToInt(middle -> letter(middle, placed)).toArray();
		List<IslandOwner> owners = new ArrayList<>();
		for (int i = 0; i < letters.length; i++) {
			int letter = letters[i];
			if (letter < 0) {
				owners.add(new IslandOwner(-1, i, 0));
				continue;
			}
			Transform frame = LetterFrame.of(placed, set.letters().get(letter), placed.letters().get(letter));
			Transform own = frame.inverse();
			List<Integer> siblings = IntStream.range(0, letters.length).filter(k -> letters[k] == letter).boxed()
					.sorted(Comparator.comparingDouble((Integer k) -> rounded(own.apply(middles.get(k)).y()))
							.thenComparingDouble(k -> own.apply(middles.get(k)).x())).toList();
			owners.add(new IslandOwner(letter, siblings.indexOf(i), Math.atan2(frame.b(), frame.a())));
		}
		return owners;
	}

	/** Islands side by side count from the left, even if one is a hair higher. */
	private static double rounded(double capHeights) {
		return Math.round(capHeights * 50);
	}

	/** The smallest letter that the place lies in, or else the nearest. */
	private static int letter(Point place, SetText text) {
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < text.letters().size(); i++) {
			Letter letter = text.letters().get(i);
			Bounds box = letter.outline().bounds();
			double size = Math.hypot(box.width(), box.height());
			// any letter that holds it comes before all that do not
			double badness = box.contains(place) ? 1 - 1 / (1 + size) : 1 + box.centre().distance(place);
			if (badness < least) {
				best = i;
				least = badness;
			}
		}
		return best;
	}

	/** Whether a decision about a character is about this island. @param island number in the letter; negative for all */
	boolean isMeant(int index, int island, SetText text) {
		if (letter < 0) {
			return false;
		}
		Letter owner = text.letters().get(letter);
		return owner.start() <= index && index < owner.end() && (island < 0 || island == number);
	}
}
