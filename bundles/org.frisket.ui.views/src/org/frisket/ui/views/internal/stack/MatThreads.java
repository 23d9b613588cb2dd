package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;

/**
 * Threads at the right end of the stack, each from a mat, a combination or weed lines to what these follow; with a bead at
 * a mat to pull it by.
 */
final class MatThreads {

	private static final int LANES = 3;
	private static final int LANE_PX = 6;
	private static final int EDGE_PX = 8;
	private static final int BEAD_PX = 9;
	private static final int KNOT_PX = 5;
	private static final int REACH_PX = 3;

	private record Thread(Element follower, int lane, int bead, List<Integer> knots) {

		/** The mat that is pulled by it; null if what follows is none. */
		Mat mat() {
			return follower instanceof Mat mat ? mat : null;
		}

		int top() {
			return Math.min(bead, knots.get(0));
		}

		int bottom() {
			return Math.max(bead, knots.get(knots.size() - 1));
		}
	}

	private final List<Thread> threads = new ArrayList<>();

	/** @param job null for none */
	MatThreads(Job job, StackRows rows) {
		if (job == null) {
			return;
		}
		Lanes lanes = new Lanes(LANES);
		for (Element element : Jobs.elements(job)) {
			if (!Jobs.sources(element).isEmpty()) {
				int bead = rows.middleOf(element);
				List<Integer> knots = Jobs.sources(element).stream().map(rows::middleOf).filter(y -> y >= 0).sorted().toList();
				if (!knots.isEmpty()) {
					int lane = lanes.take(0, Math.min(bead, knots.get(0)),
							Math.max(bead, knots.get(knots.size() - 1)));
					threads.add(new Thread(element, lane, bead, knots));
				}
			}
		}
	}

	/** What they run between. */
	List<?> list() {
		return threads;
	}

	private static int xOf(Thread thread, int width) {
		return width - EDGE_PX - thread.lane * LANE_PX;
	}

	/** Where the bead of a mat's thread is seen; null if it has none. */
	Rectangle beadOf(Mat mat, int width, int scrolled) {
		return threads.stream().filter(thread -> thread.follower == mat).findFirst()
				.map(thread -> new Rectangle(xOf(thread, width) - BEAD_PX / 2, thread.bead - scrolled - BEAD_PX / 2,
						BEAD_PX, BEAD_PX))
				.orElse(null);
	}

	/** The mat whose thread runs through a place of the control; null if none does. */
	Mat at(int x, int y, int width, int scrolled) {
		for (Thread thread : threads) {
			if (thread.mat() != null && Math.abs(y - (thread.bead - scrolled)) <= BEAD_PX && Math.abs(x - xOf(thread, width)) <= BEAD_PX / 2) {
				return thread.mat();
			}
		}
		return threads.stream()
				.filter(thread -> Math.abs(x - xOf(thread, width)) <= REACH_PX
						&& y >= thread.top() - scrolled - REACH_PX && y <= thread.bottom() - scrolled + REACH_PX)
				.map(Thread::mat).filter(Objects::nonNull).findFirst().orElse(null);
	}

	/** @param pulled the mat whose thread is pulled or pointed at; null for none */
	void paint(GC gc, int width, int scrolled, Mat pulled) {
		gc.setAntialias(SWT.ON);
		for (Thread thread : threads) {
			boolean taut = pulled != null && thread.follower == pulled;
			gc.setForeground(RowMarks.ink(false));
			gc.setBackground(gc.getForeground());
			gc.setAlpha(taut ? RowMarks.OPAQUE : RowMarks.FADED);
			gc.setLineWidth(taut ? 2 : 1);
			int x = xOf(thread, width);
			gc.drawLine(x, thread.top() - scrolled, x, thread.bottom() - scrolled);
			int left = width - RowLayout.THREADS_PX + KNOT_PX;
			for (int y : thread.knots) {
				gc.drawLine(left, y - scrolled, x, y - scrolled);
				gc.fillOval(left - KNOT_PX / 2, y - scrolled - KNOT_PX / 2, KNOT_PX, KNOT_PX);
			}
			gc.setAlpha(RowMarks.OPAQUE);
			if (thread.mat() == null) {
				gc.fillOval(x - KNOT_PX / 2, thread.bead - scrolled - KNOT_PX / 2, KNOT_PX, KNOT_PX);
				continue;
			}
			gc.fillOval(x - BEAD_PX / 2, thread.bead - scrolled - BEAD_PX / 2, BEAD_PX, BEAD_PX);
			// so that it stands out from the ground of a selected row too
			gc.setForeground(RowMarks.system(SWT.COLOR_LIST_BACKGROUND));
			gc.setLineWidth(1);
			gc.drawOval(x - BEAD_PX / 2 - 1, thread.bead - scrolled - BEAD_PX / 2 - 1, BEAD_PX + 1, BEAD_PX + 1);
		}
		gc.setLineWidth(1);
	}
}
