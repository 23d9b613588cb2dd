package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.typography.Letter;

/**
 * What joining comes to in a word whose letters stand below each other. It depends on the letters and how they stand to
 * each other, but not on where the word stands.
 *
 * @param shifts downward movement of each letter in mm, 0 for the first one
 * @param loose  numbers of the letters that could not be joined, ascending
 */
public record StackedWord(List<Double> shifts, List<Integer> loose) {

	/** So that down is along the line. */
	private static final Transform EXCHANGE = new Transform(0, 1, 1, 0, 0, 0);

	/** @param places of the letters, from the first one */
	private record Key(List<LetterKey> letters, List<Point> places, double touch, double deviation) {
	}

	/** @param across how far beside the first letter of the word it stands */
	private record ShapeKey(LetterKey letter, double across, double deviation) {

		LetterShape shape() {
			return LetterShape.whole(letter.outline().transformed(Transform.translation(across, 0).then(EXCHANGE)), deviation);
		}
	}

	/**
	 * @param touch     the overlap in mm
	 * @param deviation of flattened outlines from the true ones, in mm
	 * @param memory    of words that were joined and of shapes of letters
	 */
	public static StackedWord of(List<Letter> word, double touch, double deviation, Memory memory, Monitor monitor) {
		List<LetterKey> letters = new ArrayList<>();
		List<Point> places = new ArrayList<>();
		for (Letter letter : word) {
			letters.add(LetterKey.of(letter));
			places.add(letter.origin().minus(word.get(0).origin()).withoutNoise());
		}
		Key key = new Key(letters, places, touch, deviation);
		return memory.get(key, () -> joined(key, memory, monitor));
	}

	private static StackedWord joined(Key key, Memory memory, Monitor monitor) {
		List<PlacedShape> placed = new ArrayList<>();
		for (int i = 0; i < key.letters().size(); i++) {
			monitor.check();
			ShapeKey shape = new ShapeKey(key.letters().get(i), key.places().get(i).x(), key.deviation());
			placed.add(new PlacedShape(memory.get(shape, shape::shape), key.places().get(i).y()));
		}
		WordJoiner word = new WordJoiner(placed, key.touch(), 0, monitor);
		return new StackedWord(DoubleStream.of(word.shifts()).boxed().toList(), List.copyOf(word.loose()));
	}
}
