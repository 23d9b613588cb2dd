package org.frisket.app.internal.desk;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;

/** Two words in the tool bar: where the window is, and where else it can be. */
public final class SideSwitch extends WorkbenchWindowControlContribution {

	private final Map<Side, ToolItem> items = new EnumMap<>(Side.class);
	/** Null until the window knows itself, which it does not while it restores its tool bars. */
	private IWorkbenchWindow window;
	private final PerspectiveAdapter listener = new PerspectiveAdapter() {

		@Override
		public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
			refresh();
		}
	};

	@Override
	protected Control createControl(Composite parent) {
		ToolBar bar = new ToolBar(parent, SWT.FLAT);
		item(bar, Side.DESK, Messages.SideSwitch_desk, Messages.SideSwitch_deskTip);
		item(bar, Side.BENCH, Messages.SideSwitch_bench, Messages.SideSwitch_benchTip);
		bar.addListener(SWT.Paint, event -> attach(bar));
		bar.addListener(SWT.Dispose, event -> detach());
		return bar;
	}

	private void item(ToolBar bar, Side side, String word, String tip) {
		ToolItem item = new ToolItem(bar, SWT.RADIO);
		item.setText(word);
		item.setToolTipText(tip);
		item.addListener(SWT.Selection, event -> {
			if (item.getSelection()) {
				go(side);
			}
		});
		items.put(side, item);
	}

	private void go(Side side) {
		try {
			if (window != null) {
				side.show(window);
			}
		} catch (WorkbenchException e) {
			ILog.of(SideSwitch.class).error(e.getMessage(), e);
		}
		refresh();
	}

	private void attach(ToolBar bar) {
		if (window != null) {
			return;
		}
		for (IWorkbenchWindow each : PlatformUI.getWorkbench().getWorkbenchWindows()) {
			if (each.getShell() == bar.getShell()) {
				window = each;
				window.addPerspectiveListener(listener);
				refresh();
			}
		}
	}

	private void detach() {
		if (window != null) {
			window.removePerspectiveListener(listener);
			window = null;
		}
	}

	private void refresh() {
		items.forEach((side, item) -> {
			if (window != null && !item.isDisposed()) {
				item.setSelection(side.isShown(window));
			}
		});
	}
}
