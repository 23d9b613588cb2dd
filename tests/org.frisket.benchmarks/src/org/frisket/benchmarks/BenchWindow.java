package org.frisket.benchmarks;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.picture.JobPicture;

/** Jobs on the bench of the running workbench, and the times it takes from an event until what it brings is painted. */
final class BenchWindow {

	private static final long LIMIT_NS = 120_000_000_000L;

	private BenchWindow() {
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}

	/** Saves the job, opens it and waits until it is shown. */
	static BenchEditor open(Job job) throws Exception {
		Path file = Files.createTempFile("benchmark", JobFile.ENDING);
		JobFile.save(job, file);
		file.toFile().deleteOnExit();
		return open(file);
	}

	static BenchEditor open(Path file) throws Exception {
		BenchEditor editor = (BenchEditor) page().openEditor(new JobInput(file), Bench.EDITOR_ID);
		await(() -> editor.document().picture() != JobPicture.NONE);
		return editor;
	}

	static void await(BooleanSupplier condition) {
		Display display = Display.getCurrent();
		long end = System.nanoTime() + LIMIT_NS;
		while (!condition.getAsBoolean()) {
			if (System.nanoTime() > end) {
				throw new IllegalStateException("waited in vain");
			}
			if (!display.readAndDispatch()) {
				display.timerExec(20, () -> {
					// wakes the loop up where nothing else does
				});
				display.sleep();
			}
		}
	}

	/** Lets everything be done that is due. */
	static void settle() {
		pause(150);
	}

	/** Goes on as ever for so many milliseconds. */
	static void pause(int milliseconds) {
		long end = System.nanoTime() + milliseconds * 1_000_000L;
		await(() -> System.nanoTime() > end);
	}

	/** Milliseconds from an event until the control has been painted with the condition holding. */
	static double untilPainted(Control control, Runnable event, BooleanSupplier condition) {
		boolean[] painted = new boolean[1];
		Listener paint = each -> painted[0] |= condition.getAsBoolean();
		control.addListener(SWT.Paint, paint);
		long start = System.nanoTime();
		event.run();
		await(() -> painted[0]);
		double ms = (System.nanoTime() - start) / 1e6;
		control.removeListener(SWT.Paint, paint);
		return ms;
	}

	static void send(Control control, int type, int x, int y, int stateMask) {
		Event event = new Event();
		event.x = x;
		event.y = y;
		event.button = type == SWT.MouseMove ? 0 : 1;
		event.count = 1;
		event.stateMask = stateMask;
		control.notifyListeners(type, event);
	}

	/** CPU time of the whole process so far, in ms. */
	static double cpu() {
		return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
				.getProcessCpuTime() / 1e6;
	}

	/** Median and p95. */
	static double[] spread(double[] times) {
		double[] sorted = times.clone();
		Arrays.sort(sorted);
		return new double[] { sorted[sorted.length / 2], sorted[(int) (sorted.length * 0.95)] };
	}
}
