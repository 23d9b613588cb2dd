package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Monitor;

/** Joins the letters of one word, from left to right. */
public final class WordJoiner {

	/** So many letters to either side may hold a mark. */
	private static final int REACH_OF_MARKS = 2;

	private final List<PlacedShape> letters;
	private final double touch;
	private final double[] shifts;
	private final List<Integer> chain = new ArrayList<>();
	private final List<Integer> loose = new ArrayList<>();

	/** @param shift by which the first letter is moved; the others are by this and what they need */
	public WordJoiner(List<PlacedShape> letters, double touch, double shift, Monitor monitor) {
		this.letters = letters;
		this.touch = touch;
		shifts = new double[letters.size()];
		double moved = shift;
		for (int i = 0; i < shifts.length; i++) {
			monitor.check();
			moved += joinToChain(i, moved);
			shifts[i] = moved;
		}
		Collections.sort(loose);
	}

	/** @param moved by how much letter {@code i} is moved already */
	private double joinToChain(int i, double moved) {
		if (chain.isEmpty()) {
			chain.add(i);
			return 0;
		}
		double movement = movementToChain(i, moved);
		if (movement == Approach.NEVER) {
			movement = 0;
			if (shape(i).area() <= largestOfChain()) {
				loose.add(i);
				return movement;
			}
			loose.addAll(chain);
			chain.clear();
		}
		chain.add(i);
		return movement;
	}

	/**
	 * The letter is moved until it meets the first of the chain. Where it shares no rows with its neighbour, though,
	 * it must not slip past that one in search of another.
	 */
	private double movementToChain(int i, double moved) {
		int neighbour = chain.get(chain.size() - 1);
		double movement = movement(neighbour, i, moved);
		boolean facesNeighbour = movement != Approach.NEVER;
		for (int k = chain.size() - 2; k >= 0 && movement < 0; k--) {
			double offset = offset(chain.get(k), i, moved);
			if (Approach.mostMovement(shape(chain.get(k)), shape(i), offset, touch) > movement) {
				movement = Math.max(movement, movement(chain.get(k), i, moved));
			}
		}
		boolean slipsPast = !facesNeighbour && movement < 0
				&& Approach.gap(shape(neighbour), shape(i), offset(neighbour, i, moved + movement)) < -touch;
		return slipsPast ? Approach.NEVER : movement;
	}

	private double movement(int before, int i, double moved) {
		return Approach.movement(shape(before), shape(i), offset(before, i, moved), touch);
	}

	/** By how much letter {@code i}, moved, stands to the right of the other. */
	private double offset(int before, int i, double moved) {
		return place(i) + moved - place(before) - shifts[before];
	}

	private LetterShape shape(int i) {
		return letters.get(i).shape();
	}

	private double place(int i) {
		return letters.get(i).origin();
	}

	private double largestOfChain() {
		return chain.stream().mapToDouble(i -> shape(i).area()).max().orElse(0);
	}

	/** Movement of each letter in mm, never to the right of where it would stand after its predecessors' movement. */
	public double[] shifts() {
		return shifts;
	}

	/** Numbers of the letters that could not be joined, ascending. */
	public List<Integer> loose() {
		return loose;
	}

	/** Numbers of the letters with a mark that no neighbour holds, ascending. */
	public List<Integer> detached() {
		List<Integer> detached = new ArrayList<>();
		for (int i = 0; i < shifts.length; i++) {
			if (shape(i).hasMarks() && !isHeld(i)) {
				detached.add(i);
			}
		}
		return detached;
	}

	private boolean isHeld(int i) {
		List<LetterShape> others = new ArrayList<>();
		double[] offsets = new double[2 * REACH_OF_MARKS];
		for (int k = Math.max(0, i - REACH_OF_MARKS); k < letters.size() && k <= i + REACH_OF_MARKS; k++) {
			if (k != i) {
				offsets[others.size()] = offset(i, k, shifts[k]);
				others.add(shape(k));
			}
		}
		return shape(i).marksTouch(others, Arrays.copyOf(offsets, others.size()));
	}
}
