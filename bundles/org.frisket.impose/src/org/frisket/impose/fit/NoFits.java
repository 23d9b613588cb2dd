package org.frisket.impose.fit;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;

import org.frisket.impose.shape.Dents;
import org.frisket.impose.shape.Solid;

/**
 * The fields of all pairs of shapes that were asked for, each made once, unless there are more than memory holds: then
 * they are made again when they are asked for again, and are the same. How the two are turned against each other
 * counts, not how the first lies.
 */
public final class NoFits {

	/** The screen and its pictures need some too. */
	private static final int PART_OF_MEMORY = 4;

	private final Solid[] shapes;
	private final int turns;
	private final double slack;
	private final int cells;
	/** In bytes. */
	private final long room;
	private final LongAdder used = new LongAdder();
	private final LongAdder made = new LongAdder();
	/** By first, second and turn, as an index. */
	private final ConcurrentHashMap<Long, NoFit> fields = new ConcurrentHashMap<>();

	/**
	 * @param turns into how many steps the full circle is parted
	 * @param slack by how much more than touching parts keep apart
	 */
	public NoFits(Solid[] shapes, int turns, double slack) {
		this(shapes, turns, slack, Runtime.getRuntime().maxMemory() / PART_OF_MEMORY);
	}

	/** @param room for fields, in bytes */
	NoFits(Solid[] shapes, int turns, double slack, long room) {
		this.room = room;
		this.shapes = shapes.clone();
		this.turns = turns;
		this.slack = slack;
		cells = Dents.isCrowd(shapes.length) ? NoFit.FEW_CELLS : NoFit.CELLS;
	}

	/** @param turn of the second against the first, in steps from 0 */
	public NoFit of(int first, int second, int turn) {
		long key = ((long) first * shapes.length + second) * turns + turn;
		NoFit field = fields.get(key);
		if (field != null) {
			return field;
		}
		if (used.sum() > room) {
			forget();
		}
		return fields.computeIfAbsent(key, k -> make(first, second, turn));
	}

	private NoFit make(int first, int second, int turn) {
		NoFit field = new NoFit(shapes[first], shapes[second].turned(Turns.cos(turn, turns), Turns.sin(turn, turns)), slack,
				cells);
		used.add(field.bytes());
		made.increment();
		return field;
	}

	/** Gives the memory back. */
	public void forget() {
		used.reset();
		fields.clear();
	}

	/** How many were made so far, again or not. */
	public long made() {
		return made.sum();
	}
}
