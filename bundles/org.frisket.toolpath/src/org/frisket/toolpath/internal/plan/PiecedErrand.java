package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.List;

import org.frisket.toolpath.Line;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;

/**
 * A line worked in one or several open pieces, one after the other along it. Pieces of a closed line are worked round
 * it, from any of them, and again for each pass. Those of an open line are worked from either end, and back for the
 * next pass.
 */
final class PiecedErrand extends Errand {

	private final Line line;
	private final StrokeMaker maker;
	private final List<List<Move>> pieces;
	private final List<List<Move>> backwards;
	/** Passes that are made at once. */
	private final int atOnce;

	/** @param round whether the last piece leads on to the first */
	PiecedErrand(Line line, List<List<Move>> pieces, boolean round, int atOnce, StrokeMaker maker, double size) {
		super(line.tool(), line.passes(), size);
		this.line = line;
		this.maker = maker;
		this.pieces = pieces;
		this.atOnce = atOnce;
		backwards = round ? null : backwards(pieces);
	}

	private static List<List<Move>> backwards(List<List<Move>> pieces) {
		List<List<Move>> back = new ArrayList<>();
		for (int i = pieces.size() - 1; i >= 0; i--) {
			back.add(new Track(pieces.get(i), false).reversed().moves());
		}
		return back;
	}

	@Override
	List<Gate> gates() {
		List<Gate> gates = new ArrayList<>();
		if (backwards == null) {
			for (int i = 0; i < pieces.size(); i++) {
				gates.add(gate(pieces.get(i), pieces.get(Math.floorMod(i - 1, pieces.size()))));
			}
			return gates;
		}
		int last = pieces.size() - 1;
		boolean returns = atOnce % 2 == 0;
		gates.add(gate(pieces.get(0), returns ? backwards.get(last) : pieces.get(last)));
		gates.add(gate(backwards.get(0), returns ? pieces.get(last) : backwards.get(last)));
		return gates;
	}

	private Gate gate(List<Move> first, List<Move> last) {
		return new Gate(maker.ahead(first.get(0)), maker.aheadOfEnd(last.get(last.size() - 1)));
	}

	@Override
	int back(int gate) {
		return backwards == null || atOnce % 2 == 0 ? gate : 1 - gate;
	}

	@Override
	void work(int gate, int first, int last, List<Stroke> strokes) {
		for (int pass = first; pass <= last; pass++) {
			if (backwards == null) {
				for (int i = 0; i < pieces.size(); i++) {
					strokes.add(maker.stroke(line, pass, pieces.get((gate + i) % pieces.size())));
				}
			} else {
				for (List<Move> piece : (pass - first) % 2 == gate ? pieces : backwards) {
					strokes.add(maker.stroke(line, pass, piece));
				}
			}
		}
	}
}
