package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;

/**
 * What bounds the round offset of some pieces.
 *
 * @param loops   of rims, simple and clear of each other
 * @param sources the edges of the pieces
 */
record Rims(List<Loop> loops, List<Sources> sources, double distance) {

	Rims {
		loops = List.copyOf(loops);
		sources = List.copyOf(sources);
	}

	static Rims of(Ground ground, double distance, Monitor monitor) throws Unclear {
		List<Sources> sources = List.of(ground.sources);
		return new Rims(Trimming.trimmed(ground.at(distance), null, sources, distance, monitor), sources, distance);
	}

	/** The offset at a farther distance: nothing bounds it that does not bound this one. */
	Rims moved(double farther, Monitor monitor) throws Unclear {
		List<Loop> moved = loops.stream().map(loop -> loop.moved(farther)).toList();
		return new Rims(Trimming.trimmed(moved, null, sources, farther, monitor), sources, farther);
	}

	/** All that lies in one or the other, of which both are at the same distance. */
	Rims with(Rims other, Monitor monitor) throws Unclear {
		List<Sources> both = new ArrayList<>(sources);
		both.addAll(other.sources);
		List<Loop> clear = new ArrayList<>();
		List<Loop> meeting = new ArrayList<>();
		addMeeting(other, meeting, clear);
		int own = meeting.size();
		other.addMeeting(this, meeting, clear);
		int[] group = new int[meeting.size()];
		for (int i = own; i < group.length; i++) {
			group[i] = 1;
		}
		clear.addAll(Trimming.trimmed(meeting, group, both, distance, monitor));
		return new Rims(clear, both, distance);
	}

	private void addMeeting(Rims other, List<Loop> meeting, List<Loop> clear) {
		for (Loop loop : loops) {
			boolean meets = other.loops.stream().anyMatch(each -> each.bounds().intersects(loop.bounds()));
			(meets ? meeting : clear).add(loop);
		}
	}
}
