package org.frisket.ui.bench.internal.editor;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.ui.bench.internal.files.Ago;
import org.frisket.ui.bench.internal.files.Autosave;

/** Says when the last recovery copy was made. It wakes up only when its words change, and only while they are seen. */
final class AutosaveStatus implements Runnable {

	private static final int NEVER = -1;

	private final Display display;
	private final Autosave autosave;
	private final Consumer<String> line;
	private boolean seen;

	AutosaveStatus(Display display, Autosave autosave, Consumer<String> line) {
		this.display = display;
		this.autosave = autosave;
		this.line = line;
	}

	/** Whether its editor is the one in front. */
	void setSeen(boolean nowSeen) {
		seen = nowSeen;
		run();
	}

	@Override
	public void run() {
		display.timerExec(NEVER, this);
		if (!seen) {
			return;
		}
		Instant last = autosave.last();
		if (autosave.trouble() != null) {
			line.accept(Messages.AutosaveStatus_trouble);
		} else if (last == null) {
			line.accept(""); //$NON-NLS-1$
		} else {
			Ago ago = Ago.of(Duration.between(last, Instant.now()));
			line.accept(NLS.bind(Messages.AutosaveStatus_saved, ago.text()));
			display.timerExec((int) ago.holdsFor().toMillis(), this);
		}
	}
}
