package org.frisket.ui.orders.internal.week;

import java.time.LocalDate;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;
import org.frisket.orders.Entry;
import org.frisket.orders.week.WeekPlan;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.EntrySelection;
import org.frisket.ui.orders.internal.OpenJob;
import org.frisket.ui.orders.internal.OrderDesk;

/** The days of this week and what is due on them. */
public final class WeekView extends ViewPart implements ISelectionListener, WeekStrip.Client {

	public static final String ID = Orders.WEEK_ID;

	/** How often is looked whether it is another day. */
	private static final int LOOK_MS = 60_000;

	private final EntrySelection selection = new EntrySelection();
	private final Runnable deskListener = this::refresh;
	private WeekStrip strip;
	private DueMoves moves;
	/** Null for that of the clock. */
	private LocalDate day;

	@Override
	public void createPartControl(Composite parent) {
		strip = new WeekStrip(parent, this);
		getSite().setSelectionProvider(selection);
		getSite().getWorkbenchWindow().getSelectionService().addSelectionListener(this);
		OrderDesk.get().addListener(deskListener);
		moves = new DueMoves(getSite(), this::say);
		refresh();
		watch();
	}

	private void watch() {
		strip.getDisplay().timerExec(LOOK_MS, () -> {
			if (!strip.isDisposed()) {
				if (!today().equals(strip.plan().today())) {
					refresh();
				}
				watch();
			}
		});
	}

	private LocalDate today() {
		return day == null ? LocalDate.now() : day;
	}

	/** Shows another week than that of the clock. @param today null for that of the clock */
	public void showWeekOf(LocalDate today) {
		day = today;
		refresh();
	}

	private void refresh() {
		OrderDesk desk = OrderDesk.get();
		String hint = !desk.isKnown() ? Messages.WeekView_reading : Messages.WeekView_empty;
		strip.show(WeekPlan.of(desk.jobs(), today()), desk.trouble().orElse(hint));
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selected) {
		if (part != this && selected instanceof IStructuredSelection structured
				&& structured.getFirstElement() instanceof Entry entry) {
			strip.select(entry.number(), false);
		}
	}

	@Override
	public void selected(Entry entry) {
		selection.selectOne(entry);
	}

	@Override
	public void opened(Entry entry) {
		OpenJob.run(getSite(), entry.number(), this::say);
	}

	@Override
	public void moved(Entry entry, LocalDate to) {
		moves.make(entry, to);
	}

	private void say(String message) {
		if (!strip.isDisposed()) {
			getViewSite().getActionBars().getStatusLineManager().setMessage(message);
		}
	}

	public WeekStrip strip() {
		return strip;
	}

	@Override
	public void setFocus() {
		strip.setFocus();
	}

	@Override
	public void dispose() {
		if (moves != null) {
			moves.dispose();
		}
		OrderDesk.get().removeListener(deskListener);
		getSite().getWorkbenchWindow().getSelectionService().removeSelectionListener(this);
		super.dispose();
	}
}
