package org.frisket.ui.bench.internal.typing;

import java.util.Optional;

import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.TextRange;

/** Which letters are selected in the wording that is typed, as others are told of it: once each time they are others. */
final class TypedRange {

	private final TypingHost host;
	private Optional<TextRange> told = Optional.empty();

	TypedRange(TypingHost host) {
		this.host = host;
	}

	/** Empty where none are, and while the wording lies in no job. @param text null if nothing is typed */
	static Optional<TextRange> of(Wording wording, TypedText text) {
		return text != null && text.hasSelection() && Jobs.jobOf(wording) != null
				? Optional.of(new TextRange(wording, text.selectionStart(), text.selectionEnd()))
				: Optional.empty();
	}

	void tell(Optional<TextRange> now) {
		if (!now.equals(told)) {
			told = now;
			host.rangeChanged();
		}
	}
}
