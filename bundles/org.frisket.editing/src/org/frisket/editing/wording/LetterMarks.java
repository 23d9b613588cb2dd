package org.frisket.editing.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Bridge;
import org.frisket.model.IslandBridges;
import org.frisket.model.Nudge;
import org.frisket.model.TextChange;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;

/**
 * What of a wording hangs on certain letters, nudges, spans and bridges, as it was at one time. The objects themselves
 * are kept: edits before and after may refer to them.
 */
record LetterMarks(List<NudgeAt> nudges, List<SpanAt> spans, List<BridgeAt> bridges, List<IslandAt> islands) {

	private record NudgeAt(Nudge nudge, int index) {
	}

	private record SpanAt(TextSpan span, int start, int end) {
	}

	private record BridgeAt(Bridge bridge, int one, int other) {
	}

	private record IslandAt(IslandBridges island, int index) {
	}

	static LetterMarks of(Wording wording) {
		return new LetterMarks(wording.getNudges().stream().map(n -> new NudgeAt(n, n.getIndex())).toList(),
				wording.getSpans().stream().map(s -> new SpanAt(s, s.getStart(), s.getEnd())).toList(),
				wording.getBridges().stream().map(b -> new BridgeAt(b, b.getOne(), b.getOther())).toList(),
				wording.getIslands().stream().map(i -> new IslandAt(i, i.getIndex())).toList());
	}

	/** Puts all back as it was. */
	void restore(Wording wording) {
		nudges.forEach(at -> at.nudge.setIndex(at.index));
		spans.forEach(at -> {
			at.span.setStart(at.start);
			at.span.setEnd(at.end);
		});
		bridges.forEach(at -> {
			at.bridge.setOne(at.one);
			at.bridge.setOther(at.other);
		});
		islands.forEach(at -> at.island.setIndex(at.index));
		put(wording.getNudges(), nudges.stream().map(NudgeAt::nudge).toList());
		put(wording.getSpans(), spans.stream().map(SpanAt::span).toList());
		put(wording.getBridges(), bridges.stream().map(BridgeAt::bridge).toList());
		put(wording.getIslands(), islands.stream().map(IslandAt::island).toList());
	}

	private static <T> void put(List<T> list, List<T> objects) {
		if (!list.equals(objects)) {
			list.clear();
			list.addAll(objects);
		}
	}

	/** Gives a wording another text; what hangs on letters goes with them, or away with them. */
	static void retext(Wording wording, String text, TextChange change) {
		wording.setText(text);
		moveBridges(wording, change);
		for (Nudge nudge : new ArrayList<>(wording.getNudges())) {
			int place = change.place(nudge.getIndex());
			if (place < 0) {
				wording.getNudges().remove(nudge);
			} else {
				nudge.setIndex(place);
			}
		}
		for (TextSpan span : new ArrayList<>(wording.getSpans())) {
			Optional<TextChange.Part> part = change.part(span.getStart(), span.getEnd());
			if (part.isEmpty()) {
				wording.getSpans().remove(span);
			} else {
				span.setStart(part.get().start());
				span.setEnd(part.get().end());
			}
		}
	}

	/** A bridge needs both its letters. */
	private static void moveBridges(Wording wording, TextChange change) {
		for (Bridge bridge : new ArrayList<>(wording.getBridges())) {
			int one = change.place(bridge.getOne());
			int other = change.place(bridge.getOther());
			if (one < 0 || other < 0) {
				wording.getBridges().remove(bridge);
			} else {
				bridge.setOne(one);
				bridge.setOther(other);
			}
		}
		for (IslandBridges island : new ArrayList<>(wording.getIslands())) {
			int place = change.place(island.getIndex());
			if (place < 0) {
				wording.getIslands().remove(island);
			} else {
				island.setIndex(place);
			}
		}
	}

	/** A wording says nothing before it says something. */
	static String textOf(Wording wording) {
		return orEmpty(wording.getText());
	}

	static String orEmpty(String text) {
		return text == null ? "" : text; //$NON-NLS-1$
	}
}
