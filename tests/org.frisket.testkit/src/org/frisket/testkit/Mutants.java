package org.frisket.testkit;

import java.util.Arrays;
import java.util.Random;

/** Files that were damaged on their way: bytes changed, lost, doubled, put in, the end cut off. */
public final class Mutants {

	private static final int LONGEST_STRETCH = 40;

	private Mutants() {
	}

	/** A file with one to four faults; it may be empty. */
	public static byte[] of(byte[] file, Random random) {
		byte[] mutant = file.clone();
		for (int fault = random.nextInt(4); fault >= 0 && mutant.length > 0; fault--) {
			int at = random.nextInt(mutant.length);
			int end = Math.min(mutant.length, at + 1 + random.nextInt(LONGEST_STRETCH));
			switch (random.nextInt(12)) {
			case 0 -> mutant = Arrays.copyOf(mutant, at);
			case 1, 2 -> mutant = replaced(mutant, at, end, new byte[0]);
			case 3, 4 -> mutant = replaced(mutant, at, at, Arrays.copyOfRange(mutant, at, end));
			case 5 -> mutant[at] = (byte) random.nextInt(256);
			case 6 -> mutant[at] ^= 1 << random.nextInt(8);
			default -> mutant[at] = (byte) ('-' + random.nextInt(13));
			}
		}
		return mutant;
	}

	private static byte[] replaced(byte[] bytes, int from, int to, byte[] by) {
		byte[] result = Arrays.copyOf(bytes, bytes.length - (to - from) + by.length);
		System.arraycopy(by, 0, result, from, by.length);
		System.arraycopy(bytes, to, result, from + by.length, bytes.length - to);
		return result;
	}
}
