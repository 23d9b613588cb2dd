package org.frisket.ui.views.internal.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.PartInitException;
import org.frisket.prepare.Severity;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.internal.FrontBench;
import org.frisket.ui.views.internal.SeverityText;
import org.frisket.ui.views.internal.Shortened;

/** The control that shows the stations one after the other and goes to the one that is clicked. */
public final class WayStrip extends Canvas implements JobOnBench.Listener {

	private static final int SPACE_PX = 4;
	private static final int ICON_PX = 16;
	private static final int DOT_PX = 6;
	private static final int ARROW_PX = 6;
	private static final int FAINT = 140;
	private static final int OPAQUE = 255;

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), this);
	/** Null until the window knows itself, which it does not while it restores its tool bars. */
	private IWorkbenchWindow window;
	private FrontBench front;
	private final Font bold = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
	private final int[] widths = new int[Station.values().length];
	/** What of them the states take, which is shortened where there is no room. */
	private final int[] states = new int[Station.values().length];
	private final WayNotes notes = new WayNotes(this::benchSaid);
	/** What was to be painted when it was asked for last. */
	private List<Object> said = List.of();
	private int hovered = -1;
	private int current;

	WayStrip(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED);
		measure();
		addListener(SWT.Paint, event -> {
			attach();
			paint(event.gc);
		});
		addListener(SWT.MouseDown, this::mouseDown);
		addListener(SWT.MouseMove, event -> hover(stationAt(event.x)));
		addListener(SWT.MouseExit, event -> hover(-1));
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Dispose, event -> {
			notes.follow(null);
			if (front != null) {
				front.dispose();
			}
		});
		describe();
		attach();
	}

	private void attach() {
		if (window != null) {
			return;
		}
		for (IWorkbenchWindow each : PlatformUI.getWorkbench().getWorkbenchWindows()) {
			if (each.getShell() == getShell()) {
				window = each;
				front = new FrontBench(each.getPartService(),
						() -> each.getActivePage() == null ? null : each.getActivePage().getActiveEditor(), this,
						this::benchChanged);
				notes.follow(bench());
			}
		}
	}

	private void benchSaid() {
		if (!isDisposed()) {
			refresh();
		}
	}

	private void benchChanged() {
		notes.follow(bench());
		said = said();
		redraw();
	}

	/** The job on the bench in front; null if there is none. */
	private JobOnBench bench() {
		return front == null ? null : front.bench();
	}

	/** Each station has room for its longest usual state, so that nothing moves when the numbers do. */
	private void measure() {
		String[] longest = { NLS.bind(Messages.Station_wordings, 88), NLS.bind(Messages.Station_pieces, 888, 88_888),
				NLS.bind(Messages.Station_matCount, 88), Messages.WayStrip_longest, Messages.WayStrip_longestSheets,
				Messages.WayStrip_longestRun, Messages.WayStrip_longestFile };
		GC gc = new GC(this);
		for (Station station : Station.values()) {
			int i = station.ordinal();
			gc.setFont(bold);
			widths[i] = gc.textExtent(station.label()).x + 5 * SPACE_PX + ICON_PX + ARROW_PX;
			gc.setFont(getFont());
			states[i] = gc.textExtent(longest[i]).x;
			widths[i] += states[i];
		}
		gc.dispose();
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		int width = 0;
		for (int each : widths) {
			width += each;
		}
		GC gc = new GC(this);
		int height = Math.max(gc.getFontMetrics().getHeight(), ICON_PX) + 2 * SPACE_PX;
		gc.dispose();
		return new Point(widthHint == SWT.DEFAULT ? width : widthHint, heightHint == SWT.DEFAULT ? height : heightHint);
	}

	/** Where a station is, in pixels of the control. */
	public Rectangle boundsOf(Station station) {
		double shortened = shortened();
		int x = 0;
		for (int i = 0; i < station.ordinal(); i++) {
			x += width(i, shortened);
		}
		return new Rectangle(x, 0, width(station.ordinal(), shortened), getSize().y);
	}

	private int width(int station, double shortened) {
		return widths[station] - (int) Math.ceil(shortened * states[station]);
	}

	/** The share of the room for states that a narrow window has not got; a tool bar is cut off at its edge. */
	private double shortened() {
		int room = getShell().getClientArea().width - getDisplay().map(this, getShell(), 0, 0).x;
		int missing = IntStream.of(widths).sum() - room;
		return missing <= 0 || room <= 0 ? 0 : Math.min(1, (double) missing / IntStream.of(states).sum());
	}

	/** What a station says now; empty where no job is open. */
	public String state(Station station) {
		return bench() == null ? "" : station.state(bench(), notes); //$NON-NLS-1$
	}

	private int stationAt(int x) {
		for (Station station : Station.values()) {
			if (boundsOf(station).contains(x, 0)) {
				return station.ordinal();
			}
		}
		return -1;
	}

	private void hover(int index) {
		if (hovered != index) {
			hovered = index;
			setToolTipText(index < 0 ? null : Station.values()[index].tip());
			redraw();
		}
	}

	private void mouseDown(Event event) {
		int index = stationAt(event.x);
		if (index >= 0 && event.button == 1) {
			go(Station.values()[index]);
		}
	}

	private void key(Event event) {
		switch (event.keyCode) {
		case SWT.ARROW_RIGHT -> setCurrent(current + 1);
		case SWT.ARROW_LEFT -> setCurrent(current - 1);
		case SWT.CR, SWT.KEYPAD_CR, SWT.SPACE -> go(Station.values()[current]);
		case SWT.TAB -> traverse(
				(event.stateMask & SWT.SHIFT) != 0 ? SWT.TRAVERSE_TAB_PREVIOUS : SWT.TRAVERSE_TAB_NEXT);
		default -> {
			// not for the way
		}
		}
	}

	private void setCurrent(int index) {
		if (index >= 0 && index < widths.length) {
			current = index;
			getAccessible().setFocus(index);
			redraw();
		}
	}

	/** Opens what belongs to a station. */
	public void go(Station station) {
		IWorkbenchPage page = window == null ? null : window.getActivePage();
		if (page != null) {
			current = station.ordinal();
			try {
				station.open(page, bench());
			} catch (PartInitException e) {
				ILog.of(WayStrip.class).error(e.getMessage(), e);
			}
		}
	}

	private void paint(GC gc) {
		for (Station station : Station.values()) {
			paint(gc, station, boundsOf(station));
		}
	}

	private void paint(GC gc, Station station, Rectangle place) {
		gc.setForeground(getForeground());
		gc.setBackground(getForeground());
		if (station.ordinal() == hovered) {
			gc.setAlpha(OPAQUE / 16);
			gc.fillRectangle(place.x, place.y, place.width - ARROW_PX, place.height);
			gc.setAlpha(OPAQUE);
		}
		gc.setAntialias(SWT.ON);
		int x = place.x + SPACE_PX;
		int middle = place.y + place.height / 2;
		sign(gc, station, x, middle);
		x += ICON_PX + SPACE_PX;
		gc.setFont(bold);
		int top = middle - gc.getFontMetrics().getHeight() / 2;
		gc.drawText(station.label(), x, top, true);
		x += gc.textExtent(station.label()).x + SPACE_PX;
		gc.setFont(getFont());
		gc.drawText(Shortened.of(gc, state(station), place.x + place.width - ARROW_PX - SPACE_PX - x), x, top, true);
		if (station.ordinal() + 1 < widths.length) {
			arrow(gc, place.x + place.width - ARROW_PX - SPACE_PX / 2, middle);
		}
		if (isFocusControl() && station.ordinal() == current) {
			gc.drawFocus(place.x + 1, place.y + 1, place.width - ARROW_PX - 2, place.height - 2);
		}
	}

	/** The gravest finding, or a dot that is full while what is said holds, and hollow while it is worked out anew. */
	private void sign(GC gc, Station station, int x, int middle) {
		JobOnBench bench = bench();
		Severity worst = bench == null ? null : station.worst(bench).orElse(null);
		if (worst != null) {
			gc.drawImage(images.create(SeverityText.icon(worst).descriptor()), x, middle - ICON_PX / 2);
			return;
		}
		int left = x + (ICON_PX - DOT_PX) / 2;
		gc.setLineWidth(1);
		if (bench != null && station.isFresh(bench, notes)) {
			gc.fillOval(left, middle - DOT_PX / 2, DOT_PX, DOT_PX);
		} else {
			gc.drawOval(left, middle - DOT_PX / 2, DOT_PX, DOT_PX);
		}
	}

	private static void arrow(GC gc, int x, int middle) {
		gc.setAlpha(FAINT);
		gc.drawPolyline(new int[] { x, middle - ARROW_PX, x + ARROW_PX - 1, middle, x, middle + ARROW_PX });
		gc.setAlpha(OPAQUE);
	}

	private void describe() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = event.childID < 0 ? Messages.WayStrip_name
						: NLS.bind(Messages.WayStrip_spoken, Station.values()[event.childID].label(),
								state(Station.values()[event.childID]));
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = widths.length;
			}

			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_TOOLBAR : ACC.ROLE_PUSHBUTTON;
			}

			@Override
			public void getFocus(AccessibleControlEvent event) {
				event.childID = current;
			}
		});
	}

	@Override
	public void jobChanged() {
		refresh();
	}

	@Override
	public void pictureChanged() {
		refresh();
	}

	/** While words are typed most of what is said stays the same. */
	private void refresh() {
		List<Object> now = said();
		if (!now.equals(said)) {
			said = now;
			redraw();
		}
	}

	private List<Object> said() {
		List<Object> said = new ArrayList<>();
		for (Station station : Station.values()) {
			said.add(state(station));
			said.add(bench() == null ? Optional.empty() : station.worst(bench()));
			said.add(bench() != null && station.isFresh(bench(), notes));
		}
		return said;
	}
}
