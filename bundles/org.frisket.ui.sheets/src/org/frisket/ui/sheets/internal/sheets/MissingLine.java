package org.frisket.ui.sheets.internal.sheets;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.model.Placement;

/** The line below the sheets: copies whose part is no more, to be forgotten, and guests that cannot be read. */
final class MissingLine {

	private static final int MARGIN_PX = 4;
	private static final int MOST_NAMED = 5;

	private final Composite line;
	private final Label text;
	private final Button forget;

	MissingLine(Composite parent, Runnable action) {
		line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).applyTo(line);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(line);
		text = new Label(line, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(text);
		forget = new Button(line, SWT.PUSH);
		forget.setText(Messages.MissingLine_forget);
		forget.setToolTipText(Messages.MissingLine_forgetTip);
		forget.addListener(SWT.Selection, event -> action.run());
		line.setVisible(false);
	}

	/** The line goes where there is nothing to say. @param troubles a sentence each */
	void show(List<Placement> missing, List<String> troubles) {
		String said = String.join("\n", troubles); //$NON-NLS-1$
		if (!missing.isEmpty()) {
			String named = missing.stream().map(Placement::getPart).distinct().limit(MOST_NAMED)
					.collect(Collectors.joining(", ")); //$NON-NLS-1$
			String gone = NLS.bind(missing.size() == 1 ? Messages.MissingLine_one : Messages.MissingLine_several,
					new Object[] { missing.size(), named });
			said = said.isEmpty() ? gone : said + '\n' + gone;
		}
		if (text.getText().equals(said) && line.getVisible() == !said.isEmpty()) {
			return;
		}
		text.setText(said);
		forget.setVisible(!missing.isEmpty());
		((GridData) line.getLayoutData()).exclude = said.isEmpty();
		line.setVisible(!said.isEmpty());
		line.getParent().layout(true, true);
	}
}
