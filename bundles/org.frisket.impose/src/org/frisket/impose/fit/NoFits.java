package org.frisket.impose.fit;

import java.util.concurrent.ConcurrentHashMap;

import org.frisket.impose.shape.Solid;

/**
 * The fields of all pairs of shapes that were asked for, each made once. How the two are turned against each other
 * counts, not how the first lies.
 */
public final class NoFits {

	private final Solid[] shapes;
	private final int turns;
	private final double slack;
	/** By first, second and turn, as an index. */
	private final ConcurrentHashMap<Long, NoFit> fields = new ConcurrentHashMap<>();

	/**
	 * @param turns into how many steps the full circle is parted
	 * @param slack by how much more than touching parts keep apart
	 */
	public NoFits(Solid[] shapes, int turns, double slack) {
		this.shapes = shapes.clone();
		this.turns = turns;
		this.slack = slack;
	}

	/** @param turn of the second against the first, in steps from 0 */
	public NoFit of(int first, int second, int turn) {
		long key = ((long) first * shapes.length + second) * turns + turn;
		NoFit field = fields.get(key);
		return field != null ? field : fields.computeIfAbsent(key, k -> make(first, second, turn));
	}

	private NoFit make(int first, int second, int turn) {
		return new NoFit(shapes[first], shapes[second].turned(Turns.cos(turn, turns), Turns.sin(turn, turns)), slack);
	}
}
