package org.frisket.ui.bench.internal.handlers.sight;

import java.text.NumberFormat;
import java.text.ParsePosition;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Asks how large the bench is to be shown, in percent of its true size, and shows it so. */
public final class ZoomToHandler extends BenchHandler {

	private static final double PERCENT = 100;

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		InputDialog dialog = new InputDialog(bench.getSite().getShell(), Messages.ZoomToHandler_title,
				Messages.ZoomToHandler_percent, String.valueOf(Math.round(bench.zoom().scale() * PERCENT)),
				text -> isScale(scale(text)) ? null
						: NLS.bind(Messages.ZoomToHandler_wrong, Math.round(CanvasZoom.LEAST_SCALE * PERCENT),
								Math.round(CanvasZoom.MOST_SCALE * PERCENT))) {

			@Override
			protected void createButtonsForButtonBar(Composite parent) {
				super.createButtonsForButtonBar(parent);
				getButton(IDialogConstants.OK_ID).setText(Messages.ZoomToHandler_show);
				getButton(IDialogConstants.CANCEL_ID).setText(Messages.ZoomToHandler_cancel);
			}
		};
		if (dialog.open() == Window.OK) {
			bench.zoom().toScale(scale(dialog.getValue()));
		}
	}

	private static boolean isScale(double scale) {
		return scale >= CanvasZoom.LEAST_SCALE && scale <= CanvasZoom.MOST_SCALE;
	}

	/** NaN for what is no number. */
	private static double scale(String text) {
		String number = text.replace("%", "").strip(); //$NON-NLS-1$ //$NON-NLS-2$
		ParsePosition end = new ParsePosition(0);
		Number percent = NumberFormat.getNumberInstance().parse(number, end);
		return percent == null || end.getIndex() < number.length() ? Double.NaN : percent.doubleValue() / PERCENT;
	}
}
