package org.frisket.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** One frame of dragging an element among 2,000, against the same on a bench with that element alone. */
final class DragBenchmark {

	private static final int MANY = 2000;
	private static final int FRAMES = 120;

	private DragBenchmark() {
	}

	static Void run() throws Exception {
		double[] many = frames(job(MANY));
		double[] one = frames(job(1));
		System.out.printf("frame of a drag among %d elements: median %.1f ms, p95 %.1f ms; %.2f times that of one alone (%.1f ms)%n",
				MANY, many[0], many[1], many[0] / one[0], one[0]);
		return null;
	}

	/** Stars in rows, as on a sheet of tags. */
	static Job job(int count) {
		Job job = Jobs.create("many", "Many");
		Layer layer = Jobs.addLayer(job, "Tags");
		int across = (int) Math.ceil(Math.sqrt(count));
		for (int i = 0; i < count; i++) {
			Outline tag = Jobs.addOutline(layer, "M 0 0 L 0 8 C 2 10 6 10 8 8 L 8 0 C 6 2 2 2 0 0 Z");
			tag.setTransform(Matrix.translation(10.0 * (i % across), 12.0 * (i / across)));
			Jobs.addOperation(tag, OperationKind.CUT);
		}
		return job;
	}

	/** CPU time of this thread so far, in ms. */
	private static double ownCpu() {
		return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
	}

	private static double[] frames(Job job) throws Exception {
		BenchEditor editor = BenchWindow.open(job);
		BenchWindow.await(editor::isUpToDate);
		BenchWindow.settle();
		Control canvas = editor.viewer().getControl();
		Point start = editor.zoom().toPixel(new org.frisket.geometry.Point(4, 5));
		BenchWindow.send(canvas, SWT.MouseMove, start.x, start.y, 0);
		double pressed = ownCpu();
		BenchWindow.send(canvas, SWT.MouseDown, start.x, start.y, 0);
		double press = ownCpu() - pressed;
		List<Double> times = new ArrayList<>();
		List<Double> work = new ArrayList<>();
		for (int i = 1; i <= FRAMES; i++) {
			int step = i;
			double before = ownCpu();
			times.add(BenchWindow.untilPainted(canvas,
					() -> BenchWindow.send(canvas, SWT.MouseMove, start.x + 5 + step, start.y + step % 7, SWT.BUTTON1), () -> true));
			work.add(ownCpu() - before);
		}
		System.out.printf("  work of the window's own thread: press %.0f ms, first frame %.0f ms, median of others %.1f ms, slowest %s ms%n", press,
				work.get(0), work.stream().sorted().toList().get(FRAMES / 2), work.stream().skip(1).sorted(Comparator.reverseOrder()).limit(12).map(Math::round).toList());
		BenchWindow.send(canvas, SWT.MouseUp, start.x + FRAMES, start.y, SWT.BUTTON1);
		BenchWindow.page().closeAllEditors(false);
		return BenchWindow.spread(times.stream().skip(FRAMES / 4).mapToDouble(each -> each).toArray());
	}
}
