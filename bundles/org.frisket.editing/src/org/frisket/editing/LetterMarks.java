package org.frisket.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Nudge;
import org.frisket.model.TextChange;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;

/**
 * What of a wording hangs on certain letters, nudges and spans, as it was at one time. The objects themselves are kept:
 * edits before and after may refer to them.
 */
record LetterMarks(List<NudgeAt> nudges, List<SpanAt> spans) {

	private record NudgeAt(Nudge nudge, int index) {
	}

	private record SpanAt(TextSpan span, int start, int end) {
	}

	static LetterMarks of(Wording wording) {
		return new LetterMarks(wording.getNudges().stream().map(n -> new NudgeAt(n, n.getIndex())).toList(),
				wording.getSpans().stream().map(s -> new SpanAt(s, s.getStart(), s.getEnd())).toList());
	}

	/** Puts all back as it was. */
	void restore(Wording wording) {
		nudges.forEach(at -> at.nudge.setIndex(at.index));
		spans.forEach(at -> {
			at.span.setStart(at.start);
			at.span.setEnd(at.end);
		});
		put(wording.getNudges(), nudges.stream().map(NudgeAt::nudge).toList());
		put(wording.getSpans(), spans.stream().map(SpanAt::span).toList());
	}

	private static <T> void put(List<T> list, List<T> objects) {
		if (!list.equals(objects)) {
			list.clear();
			list.addAll(objects);
		}
	}

	/** Gives a wording another text; nudges and spans go with their letters, or away with them. */
	static void retext(Wording wording, String text, TextChange change) {
		wording.setText(text);
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

	/** A wording says nothing before it says something. */
	static String textOf(Wording wording) {
		return orEmpty(wording.getText());
	}

	static String orEmpty(String text) {
		return text == null ? "" : text; //$NON-NLS-1$
	}
}
