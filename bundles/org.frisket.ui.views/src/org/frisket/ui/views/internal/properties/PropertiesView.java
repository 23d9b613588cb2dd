package org.frisket.ui.views.internal.properties;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.fonts.FontPopup;

/** The properties of what is selected on the bench in front, grouped by meaning; each field is one step of undo. */
public final class PropertiesView extends BenchView {

	private static final int MARGIN_PX = 8;

	private final Subject subject = new Subject();
	private ScrolledComposite scroll;
	private Composite body;
	private Label heading;
	private WordingForm wording;
	private List<Form> forms = List.of();

	@Override
	protected Control createContent(Composite parent) {
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		body = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(body);
		scroll.setContent(body);
		heading = new Label(body, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
		wording = new WordingForm(body, subject);
		forms = List.of(wording, new PlaceForm(body, subject), new ElementForm(body, subject), new MatForm(body, subject),
				new OperationForm(body, subject));
		scroll.addListener(SWT.Resize, event -> Form.layout(body));
		new TextKeys(getSite()).activate();
		return scroll;
	}

	@Override
	protected void benchChanged() {
		selectionChanged();
	}

	@Override
	public void selectionChanged() {
		if (isShown()) {
			// selected anew, after an undo say: what is being typed stays
			refresh();
			return;
		}
		subject.set(bench());
		if (bench() == null) {
			showNote(Messages.PropertiesView_noBench);
		} else if (subject.elements().isEmpty()) {
			showNote(Messages.PropertiesView_nothing);
		} else {
			wording.setShown(!subject.wordings().isEmpty());
			forms.forEach(Form::reset);
			showHeading();
			body.layout(true, true);
			Form.layout(body);
			showContent();
		}
	}

	private boolean isShown() {
		return bench() != null && bench() == subject.bench() && !subject.elements().isEmpty()
				&& subject.elements().equals(bench().selection());
	}

	private void showHeading() {
		heading.setText(subject.elements().size() == 1 ? ElementText.of(subject.elements().get(0))
				: NLS.bind(Messages.PropertiesView_several, subject.elements().size()));
	}

	@Override
	public void jobChanged() {
		if (bench() != null && !bench().selection().equals(subject.elements())) {
			selectionChanged();
		} else {
			refresh();
		}
	}

	@Override
	public void pictureChanged() {
		refresh();
	}

	private void refresh() {
		if (!subject.elements().isEmpty()) {
			forms.forEach(Form::refresh);
			showHeading();
		}
	}

	/** The field that is called by a name on the screen. */
	public Control field(String name) {
		Control found = find(body, name);
		if (found == null) {
			throw new IllegalArgumentException(name);
		}
		return found;
	}

	/** The list of fonts while it is open; null otherwise. */
	public FontPopup fontPopup() {
		return wording.font().popup();
	}

	private static Control find(Composite parent, String name) {
		for (Control child : parent.getChildren()) {
			if (name.equals(child.getData(Form.NAME)) && child.getClass() != Composite.class) {
				return child;
			}
			if (child instanceof Composite composite) {
				Control found = find(composite, name);
				if (found != null) {
					return found;
				}
			}
		}
		return null;
	}
}
