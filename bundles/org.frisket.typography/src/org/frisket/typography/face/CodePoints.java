package org.frisket.typography.face;

import java.lang.Character.UnicodeScript;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** An immutable set of characters, kept as ranges. */
public final class CodePoints {

	public static final CodePoints NONE = new CodePoints(new int[0]);

	/** First and last of each range, ascending, never touching. */
	private final int[] ranges;

	private CodePoints(int[] ranges) {
		this.ranges = ranges;
	}

	public static CodePoints of(BitSet set) {
		int[] ranges = new int[16];
		int count = 0;
		for (int from = set.nextSetBit(0); from >= 0;) {
			int after = set.nextClearBit(from);
			if (count == ranges.length) {
				ranges = Arrays.copyOf(ranges, 2 * count);
			}
			ranges[count++] = from;
			ranges[count++] = after - 1;
			from = set.nextSetBit(after);
		}
		return new CodePoints(Arrays.copyOf(ranges, count));
	}

	/** The characters of a text that leave a mark or a blank: without line ends and invisible signs. */
	public static CodePoints in(String text) {
		BitSet set = new BitSet();
		text.codePoints().filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT
				&& Character.getType(c) != Character.SURROGATE).forEach(set::set);
		return of(set);
	}

	/**
	 * @param ranges first and last of each range, ascending
	 * @throws IllegalArgumentException if they are not
	 */
	public static CodePoints ofRanges(int... ranges) {
		int before = -2;
		for (int i = 0; i < ranges.length; i += 2) {
			if (i + 1 == ranges.length || ranges[i] <= before + 1 || ranges[i + 1] < ranges[i]
					|| ranges[i + 1] > Character.MAX_CODE_POINT) {
				throw new IllegalArgumentException("ranges of characters that do not ascend");
			}
			before = ranges[i + 1];
		}
		return new CodePoints(ranges.clone());
	}

	public boolean contains(int codePoint) {
		int at = Arrays.binarySearch(ranges, codePoint);
		// between the two ends of a range the insertion point is odd
		return at >= 0 || (-at - 1) % 2 != 0;
	}

	public boolean containsAll(CodePoints others) {
		for (int i = 0; i < others.ranges.length; i += 2) {
			int at = Arrays.binarySearch(ranges, others.ranges[i]);
			int range = at >= 0 ? at / 2 : (-at - 1) / 2;
			boolean starts = at >= 0 || (-at - 1) % 2 != 0;
			if (!starts || ranges[2 * range + 1] < others.ranges[i + 1]) {
				return false;
			}
		}
		return true;
	}

	public int size() {
		int size = 0;
		for (int i = 0; i < ranges.length; i += 2) {
			size += ranges[i + 1] - ranges[i] + 1;
		}
		return size;
	}

	public boolean isEmpty() {
		return ranges.length == 0;
	}

	/** In ascending order. */
	public void forEach(IntConsumer action) {
		for (int i = 0; i < ranges.length; i += 2) {
			IntStream.rangeClosed(ranges[i], ranges[i + 1]).forEach(action);
		}
	}

	/** First and last of each range, ascending. */
	public int[] ranges() {
		return ranges.clone();
	}

	/** How many characters of each script there are (UAX #24); those that belong to none in particular are left out. */
	public Map<UnicodeScript, Integer> scripts() {
		Map<UnicodeScript, Integer> scripts = new EnumMap<>(UnicodeScript.class);
		forEach(c -> scripts.merge(UnicodeScript.of(c), 1, Integer::sum));
		scripts.remove(UnicodeScript.COMMON);
		scripts.remove(UnicodeScript.INHERITED);
		scripts.remove(UnicodeScript.UNKNOWN);
		return scripts;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof CodePoints c && Arrays.equals(ranges, c.ranges);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(ranges);
	}

	@Override
	public String toString() {
		return size() + " characters";
	}
}
