package org.frisket.ui.bench.internal.rulers;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.frisket.ui.bench.internal.snap.SnapKey;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** Pulls new guides out of a ruler: the one at the top gives guides from left to right. Escape gives up. */
final class GuidePull {

	private final RulerCanvas ruler;
	private final Guides guides;
	private final Listener keys = this::key;
	private GuideDrag drag;
	private SnapKey key = new SnapKey();
	private Point last = new Point(0, 0);

	private GuidePull(RulerCanvas ruler, Guides guides) {
		this.ruler = ruler;
		this.guides = guides;
	}

	/** Lets guides be pulled out of a ruler from now on. */
	static void from(RulerCanvas ruler, Guides guides) {
		GuidePull pull = new GuidePull(ruler, guides);
		ruler.setCursor(ruler.getDisplay().getSystemCursor(ruler.isAcross() ? SWT.CURSOR_SIZENS : SWT.CURSOR_SIZEWE));
		ruler.addListener(SWT.MouseDown, pull::pressed);
		ruler.addListener(SWT.MouseMove, pull::moved);
		ruler.addListener(SWT.MouseUp, pull::released);
		ruler.addListener(SWT.Dispose, event -> pull.end());
	}

	private void pressed(Event event) {
		if (event.button == 1 && drag == null) {
			// what is pulled out must be seen
			SurfaceOption.GUIDES.set(true);
			key = new SnapKey();
			drag = new GuideDrag(guides, null, ruler.isAcross());
			ruler.getDisplay().addFilter(SWT.KeyDown, keys);
			ruler.getDisplay().addFilter(SWT.KeyUp, keys);
		}
	}

	private void moved(Event event) {
		if (drag != null) {
			Control canvas = guides.viewer().getControl();
			last = ruler.getDisplay().map(ruler, canvas, event.x, event.y);
			show((event.stateMask & SWT.ALT) != 0);
		}
	}

	private void show(boolean modifier) {
		drag.to(last.x, last.y, key.isHeld(modifier));
	}

	private void released(Event event) {
		if (drag != null && event.button == 1) {
			// the moves before it may have been swallowed, if the button was let go quickly
			moved(event);
			GuideDrag finished = drag;
			end();
			finished.finish();
		}
	}

	private void key(Event event) {
		if (event.keyCode == SWT.ESC) {
			event.doit = false;
			drag.erase();
			end();
		} else if (key.turned(event.keyCode, event.type == SWT.KeyDown)) {
			show(false);
		}
	}

	private void end() {
		drag = null;
		if (!ruler.getDisplay().isDisposed()) {
			ruler.getDisplay().removeFilter(SWT.KeyDown, keys);
			ruler.getDisplay().removeFilter(SWT.KeyUp, keys);
		}
	}
}
