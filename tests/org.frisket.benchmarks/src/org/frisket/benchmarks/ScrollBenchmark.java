package org.frisket.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.IWorkbenchPage;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.orders.OrderBook;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.book.BookGrid;
import org.frisket.ui.orders.internal.book.BookView;

/**
 * Scrolling through an order book of many jobs in a real window, with the wheel of the mouse and with a key held down: the
 * longest time for which the window answers nothing.
 */
final class ScrollBenchmark {

	private static final int WHEEL_DOWN = 5;
	private static final int TURNS = 400;
	private static final int PRESSES = 200;
	private static final int BETWEEN_MS = 12;

	private ScrollBenchmark() {
	}

	static Void run() throws Exception {
		Path folder = Files.createTempDirectory("frisket-scroll");
		Path before = Studio.folder().path();
		try {
			StudioFolder studio = new StudioFolder(folder);
			OrderBookBenchmark.filled(studio);
			draw(studio);
			Studio.choose(Optional.of(folder));
			measure();
		} finally {
			Studio.choose(Optional.of(before));
			BenchWindow.pause(3000);
			try (Stream<Path> files = Files.walk(folder)) {
				for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
					Files.deleteIfExists(file);
				}
			}
		}
		return null;
	}

	/** Gives those that are scrolled through something that small pictures are made of. */
	private static void draw(StudioFolder studio) throws IOException {
		Job job = Jobs.create("tag", "Gift tag");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setColour("#2a4d8f");
		Jobs.addOperation(Jobs.addOutline(layer, "M0 12L12 0H80V50H12L0 38Z"), OperationKind.CUT);
		ByteArrayOutputStream packed = new ByteArrayOutputStream();
		try (OutputStream out = new DeflaterOutputStream(packed)) {
			out.write(JobFile.toBytes(job));
		}
		String document = Base64.getEncoder().encodeToString(packed.toByteArray());
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.change(connection -> Sql.update(connection, "INSERT INTO orders_document (job, part, content) "
					+ "SELECT id, 0, CAST(? AS VARCHAR) FROM orders_job WHERE number > ?", document, 80_000L));
		}
	}

	private static void measure() throws Exception {
		IWorkbenchPage page = BenchWindow.page();
		BookView book = (BookView) page.showView(Orders.BOOK_ID);
		page.setPartState(page.getReference(book), IWorkbenchPage.STATE_MAXIMIZED);
		BookGrid grid = book.grid();
		BenchWindow.await(() -> grid.lines().size() == OrderBookBenchmark.JOBS);
		grid.table().getShell().forceActive();
		BenchWindow.await(() -> grid.table().isFocusControl() || grid.table().setFocus());
		BenchWindow.settle();
		Point middle = grid.table().toDisplay(300, 200);
		report("the wheel turned " + TURNS + " times", grid, "mousemove", "" + middle.x, "" + middle.y, "click", "--repeat",
				"" + TURNS, "--delay", "" + BETWEEN_MS, "" + WHEEL_DOWN);
		report("PageDown held for " + PRESSES + " repeats", grid, "key", "--repeat", "" + PRESSES, "--delay", "" + BETWEEN_MS,
				"Next");
		report("from the last line to the first", grid, "key", "--repeat", "20", "--delay", "60", "ctrl+End", "ctrl+Home");
		report("all selected", grid, "key", "ctrl+a");
	}

	private static void report(String what, BookGrid grid, String... command) throws IOException {
		List<String> line = new ArrayList<>(List.of("xdotool"));
		line.addAll(List.of(command));
		int top = grid.top();
		Stalls stalls = new Stalls(grid.table());
		Process process = new ProcessBuilder(line).redirectOutput(Redirect.DISCARD).redirectError(Redirect.INHERIT).start();
		stalls.watch(process::isAlive);
		stalls.close();
		System.out.printf("order book of %d jobs, %s (from line %d to %d): longest stall %.0f ms (goal 50 ms; %.0f ms of "
				+ "work), 99 of 100 under %.0f ms, %d paints, the longest %.0f ms%n", OrderBookBenchmark.JOBS, what, top, grid.top(),
				stalls.longest(), stalls.work / 1e6, stalls.ofHundred(99), stalls.paints, stalls.longestPaint / 1e6);
	}

	private interface Going {
		boolean on();
	}

	/** How long the window answers nothing, turn by turn of its loop. */
	private static final class Stalls {

		private static final long AFTER_NS = 300_000_000L;
		private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

		private final Control control;
		private final List<Double> turns = new ArrayList<>();
		private final Listener painting = event -> begin();
		private final Listener painted = event -> end();
		private long begun;
		private int paints;
		private double longestPaint;
		/** The most that the thread of the window worked at one turn, also while others have the processors. */
		private double work;

		Stalls(Control control) {
			this.control = control;
			control.getDisplay().addFilter(SWT.Paint, painting);
			// told after the table itself
			control.addListener(SWT.Paint, painted);
		}

		private void begin() {
			begun = System.nanoTime();
		}

		private void end() {
			paints++;
			longestPaint = Math.max(longestPaint, System.nanoTime() - begun);
		}

		void watch(Going going) {
			Display display = control.getDisplay();
			long end = Long.MAX_VALUE;
			while (System.nanoTime() < end) {
				if (end == Long.MAX_VALUE && !going.on()) {
					end = System.nanoTime() + AFTER_NS;
				}
				long start = System.nanoTime();
				long worked = THREADS.getCurrentThreadCpuTime();
				boolean more = display.readAndDispatch();
				turns.add((System.nanoTime() - start) / 1e6);
				work = Math.max(work, THREADS.getCurrentThreadCpuTime() - worked);
				if (!more) {
					try {
						Thread.sleep(1);
					} catch (InterruptedException e) {
						Thread.currentThread().interrupt();
						return;
					}
				}
			}
		}

		double longest() {
			return turns.stream().mapToDouble(Double::doubleValue).max().orElse(0);
		}

		double ofHundred(int percent) {
			List<Double> sorted = turns.stream().filter(each -> each > 0.1).sorted().toList();
			return sorted.isEmpty() ? 0 : sorted.get((int) ((sorted.size() - 1L) * percent / 100));
		}

		void close() {
			control.getDisplay().removeFilter(SWT.Paint, painting);
			control.removeListener(SWT.Paint, painted);
		}
	}
}
