package org.frisket.benchmarks;

import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.picture.ElementPicture;

/** From a key until the bench is painted with its letter, and until the mats follow, against a bare text field. */
final class KeystrokeBenchmark {

	/** 40 letters without the spaces. */
	private static final String LINE = "harbour lane paperworks ferry anniversary tag";
	private static final int WARM_UP = 12;
	private static final int KEYS = 60;
	private static final int LETTERS = 3;
	/** A fluent hand; the checks of one picture begin before the next key. */
	private static final int BETWEEN_KEYS_MS = 120;

	private KeystrokeBenchmark() {
	}

	static Void run() throws Exception {
		double[] bare = bareField();
		report("one joined line of 40, three mats (goal 50 ms)", joined(LINE), KEYS, bare);
		report("ten joined lines of 40, three mats", joined(String.join("\n", Collections.nCopies(10, LINE))),
				KEYS / 2, bare);
		return null;
	}

	private static Job joined(String text) {
		Job job = Jobs.create("keys", "Keys");
		Layer layer = Jobs.addLayer(job, "Wording");
		Wording wording = Jobs.addWording(layer, text, 20);
		wording.setFont(Jobs.font("Dancing Script", null, null, null));
		wording.setJoined(true);
		wording.setTouch(0.3);
		Jobs.addOperation(wording, OperationKind.CUT);
		for (double distance : new double[] { 3, 6, 9 }) {
			Layer mats = Jobs.addLayer(job, "Mat");
			Jobs.addOperation(Jobs.addMat(mats, distance, List.of(wording)), OperationKind.CUT);
		}
		return job;
	}

	private static void report(String what, Job job, int keys, double[] bare) throws Exception {
		BenchEditor editor = BenchWindow.open(job);
		BenchWindow.settle();
		Wording wording = (Wording) Jobs.elements(editor.document().job()).get(0);
		editor.typing().edit(wording);
		Control canvas = editor.viewer().getControl();
		Random random = new Random(40);
		double[] letters = new double[keys];
		double[] mats = new double[keys];
		double[] cpu = new double[keys];
		for (int i = -WARM_UP; i < keys; i++) {
			// words of three letters, each in place of the one before, so that nothing is known of them
			if (Math.floorMod(i, LETTERS) == 0) {
				for (int letter = 0; letter < LETTERS && i > -WARM_UP; letter++) {
					press(canvas, SWT.BS);
				}
				BenchWindow.await(() -> isShown(editor, wording));
			}
			BenchWindow.pause(BETWEEN_KEYS_MS);
			char character = (char) ('a' + random.nextInt(26));
			ElementPicture before = editor.document().picture().element(wording.getId());
			double start = BenchWindow.cpu();
			double ms = BenchWindow.untilPainted(canvas, () -> press(canvas, character),
					() -> editor.document().picture().element(wording.getId()) != before);
			letters[Math.max(i, 0)] = ms;
			double more = isShown(editor, wording) ? 0 : BenchWindow.untilPainted(canvas, () -> {
				// the mats are on their way
			}, () -> isShown(editor, wording));
			mats[Math.max(i, 0)] = ms + more;
			cpu[Math.max(i, 0)] = BenchWindow.cpu() - start;
		}
		tell("letters of " + what, letters, bare);
		tell("mats of " + what, mats, bare);
		System.out.printf("  CPU of all threads until then: median %.0f ms per key%n", BenchWindow.spread(cpu)[0]);
		BenchWindow.page().closeAllEditors(false);
	}

	private static void tell(String what, double[] times, double[] bare) {
		double[] spread = BenchWindow.spread(times);
		System.out.printf("key to repaint, %s: median %.1f ms, p95 %.1f ms; %.1f times a bare text field's p95 (%.1f ms)%n",
				what, spread[0], spread[1], spread[1] / bare[1], bare[1]);
	}

	private static void press(Control control, char character) {
		Event event = new Event();
		event.character = character;
		event.keyCode = character;
		control.notifyListeners(SWT.KeyDown, event);
	}

	/** Whether the whole picture, mats and all, is that of the words as they are. */
	private static boolean isShown(BenchEditor editor, Wording wording) {
		PreparedJob prepared = editor.document().picture().prepared();
		return prepared != null && prepared.element(wording.getId())
				.map(each -> ((Wording) each.element()).getText().equals(wording.getText())).orElse(false);
	}

	private static double[] bareField() {
		Shell shell = new Shell(Display.getCurrent());
		shell.setLayout(new FillLayout());
		Text field = new Text(shell, SWT.SINGLE);
		field.setText(LINE);
		shell.setSize(600, 80);
		shell.open();
		BenchWindow.settle();
		double[] times = new double[KEYS];
		for (int i = -WARM_UP; i < KEYS; i++) {
			double ms = BenchWindow.untilPainted(field, () -> field.append("x"), () -> true);
			times[Math.max(0, i)] = ms;
		}
		shell.dispose();
		return BenchWindow.spread(times);
	}
}
