package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.typography.Letter;

/**
 * What joining comes to in a word. It depends on the letters of the word and how they stand to each other, but not on
 * where the word stands.
 *
 * @param shifts   movement of each letter in mm, 0 for the first one
 * @param loose    numbers of the letters that could not be joined, ascending
 * @param detached numbers of the letters with a mark that no neighbour holds, ascending
 */
public record JoinedWord(List<Double> shifts, List<Integer> loose, List<Integer> detached) {

	/** @param places of the letters along the line, from the first one */
	private record Key(List<LetterKey> letters, List<Double> places, double touch, double deviation) {

		static Key of(List<Letter> word, double touch, double deviation) {
			List<LetterKey> letters = new ArrayList<>();
			List<Double> places = new ArrayList<>();
			for (Letter letter : word) {
				letters.add(LetterKey.of(letter));
				places.add(letter.origin().minus(word.get(0).origin()).withoutNoise().x());
			}
			return new Key(letters, places, touch, deviation);
		}
	}

	/**
	 * @param touch     the overlap in mm
	 * @param deviation of flattened outlines from the true ones, in mm
	 * @param shapes    of the letters with such a deviation
	 * @param memory    of words that were joined
	 */
	public static JoinedWord of(List<Letter> word, double touch, double deviation, Function<LetterKey, LetterShape> shapes,
			Memory memory, Monitor monitor) {
		Key key = Key.of(word, touch, deviation);
		return memory.get(key, () -> joined(key, shapes, monitor));
	}

	private static JoinedWord joined(Key key, Function<LetterKey, LetterShape> shapes, Monitor monitor) {
		List<PlacedShape> placed = new ArrayList<>();
		for (int i = 0; i < key.letters().size(); i++) {
			monitor.check();
			placed.add(new PlacedShape(shapes.apply(key.letters().get(i)), key.places().get(i)));
		}
		WordJoiner word = new WordJoiner(placed, key.touch(), 0, monitor);
		return new JoinedWord(DoubleStream.of(word.shifts()).boxed().toList(), List.copyOf(word.loose()), word.detached());
	}
}
