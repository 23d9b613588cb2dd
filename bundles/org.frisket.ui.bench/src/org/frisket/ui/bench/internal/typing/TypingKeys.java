package org.frisket.ui.bench.internal.typing;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** What the keys of the bench do to a wording that is typed. On an empty job the first character begins one. */
final class TypingKeys implements Listener {

	private final Typing typing;

	TypingKeys(Typing typing) {
		this.typing = typing;
	}

	@Override
	public void handleEvent(Event event) {
		if (typing.isActive()) {
			typed(event);
		} else if (isCharacter(event) && event.character != ' ' && typing.isAwaited()) {
			typing.begin();
			if (typing.isActive()) {
				insert(event);
			}
		}
	}

	private void typed(Event event) {
		switch (event.keyCode) {
		case SWT.ESC -> typing.end(true);
		case SWT.CR, SWT.KEYPAD_CR -> typing.insert("\n"); //$NON-NLS-1$
		case SWT.BS -> typing.change(TypedText::deleteBefore);
		case SWT.DEL -> typing.deleteAfter();
		case SWT.ARROW_LEFT ->
			move(event, byWord(event) ? TypedText::wordLeft : leftOut(event, t -> VisualCaret.move(t, false), true));
		case SWT.ARROW_RIGHT ->
			move(event, byWord(event) ? TypedText::wordRight : leftOut(event, t -> VisualCaret.move(t, true), false));
		case SWT.ARROW_UP -> move(event, t -> t.up(typing.places()));
		case SWT.ARROW_DOWN -> move(event, t -> t.down(typing.places()));
		case SWT.HOME -> move(event, byWord(event) ? TypedText::textStart : TypedText::lineStart);
		case SWT.END -> move(event, byWord(event) ? TypedText::textEnd : TypedText::lineEnd);
		default -> {
			if (isCharacter(event)) {
				insert(event);
			}
		}
		}
	}

	private void move(Event event, Consumer<TypedText> step) {
		typing.move(step, (event.stateMask & SWT.SHIFT) != 0);
	}

	private static boolean byWord(Event event) {
		return (event.stateMask & SWT.MOD1) != 0;
	}

	/** An arrow leaves a selection by the end on its side, instead of a letter further. */
	private static Consumer<TypedText> leftOut(Event event, Consumer<TypedText> step, boolean toStart) {
		return text -> {
			if (text.hasSelection() && (event.stateMask & SWT.SHIFT) == 0) {
				text.setCaret(toStart ? text.selectionStart() : text.selectionEnd());
			} else {
				step.accept(text);
			}
		};
	}

	private void insert(Event event) {
		typing.insert(String.valueOf(event.character));
	}

	private static boolean isCharacter(Event event) {
		int held = event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND);
		// both together are how some keyboards reach their third row
		return event.character >= ' ' && event.character != SWT.DEL && (held == 0 || held == (SWT.CTRL | SWT.ALT));
	}
}
