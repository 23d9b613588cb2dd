package org.frisket.ui.views.internal.properties;

import java.text.BreakIterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.ui.bench.TextRange;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.WhenLetGo;
import org.frisket.ui.views.internal.fonts.FontPopup;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.Heading;
import org.frisket.ui.views.internal.properties.wording.FlowForm;
import org.frisket.ui.views.internal.properties.wording.HoldForm;
import org.frisket.ui.views.internal.properties.wording.LetterformForm;
import org.frisket.ui.views.internal.properties.wording.PenForm;
import org.frisket.ui.views.internal.properties.wording.SpacingForm;
import org.frisket.ui.views.internal.properties.wording.WordingForm;
import org.frisket.ui.views.internal.properties.wording.WordingPart;

/** The properties of what is selected on the bench in front, grouped by meaning; each field is one step of undo. */
public final class PropertiesView extends BenchView {

	private static final int MARGIN_PX = 8;

	private final Subject subject = new Subject();
	private ScrolledComposite scroll;
	private Composite body;
	private Label heading;
	private WordingForm wording;
	private List<WordingPart> wordingParts = List.of();
	private List<KindForm> kindForms = List.of();
	private List<Form> elementForms = List.of();
	private List<Form> forms = List.of();
	/** To lay the forms out anew takes longer than a frame of a drag may. */
	private WhenLetGo layout;

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
		wordingParts = List.of(wording, new SpacingForm(body, subject), new LetterformForm(body, subject),
				new FlowForm(body, subject), new HoldForm(body, subject), new PenForm(body, subject));
		kindForms = List.of(new CombinationForm(body, subject), new WeedLinesForm(body, subject),
				new CornerForm(body, subject), new PictureForm(body, subject));
		elementForms = List.of(new PlaceForm(body, subject), new ElementForm(body, subject), new MatForm(body, subject),
				new OperationForm(body, subject), new MeasureForm(body, subject));
		forms = Stream.of(wordingParts, kindForms, elementForms).<Form>flatMap(List::stream).toList();
		scroll.addListener(SWT.Resize, event -> Form.layout(body));
		new TextKeys(getSite()).activate();
		layout = new WhenLetGo(parent.getDisplay(), this::showSelection);
		return scroll;
	}

	/** Into the first field; a field that has the focus keeps it. */
	@Override
	public void setFocus() {
		Control focus = body.getDisplay().getFocusControl();
		while (focus != null && focus != body) {
			focus = focus.getParent();
		}
		if (note().isEmpty() && focus == body) {
			return;
		}
		Control first = note().isEmpty() ? firstField(body) : null;
		if (first == null || !first.setFocus()) {
			super.setFocus();
		}
	}

	private static Control firstField(Composite parent) {
		for (Control child : parent.getChildren()) {
			if (child instanceof Text text && text.isVisible()) {
				return text;
			}
			Control found = child instanceof Composite composite ? firstField(composite) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	@Override
	protected void benchChanged() {
		// the one before may be closed
		layout.cancel();
		showSelection();
	}

	@Override
	public void selectionChanged() {
		layout.run();
	}

	private void showSelection() {
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
			elementForms.forEach(form -> form.setShown(subject.range().isEmpty()));
			showWanted();
			forms.forEach(Form::reset);
			showHeading();
			body.layout(true, true);
			Form.layout(body);
			showContent();
		}
	}

	@Override
	public void dispose() {
		layout.dispose();
		super.dispose();
	}

	private boolean isShown() {
		return !subject.elements().isEmpty() && subject.isSelectedOn(bench());
	}

	private void showWanted() {
		wordingParts.forEach(part -> part.setShown(part.isWanted()));
		kindForms.forEach(form -> form.setShown(form.isWanted()));
	}

	private void showHeading() {
		heading.setText(subject.range().map(PropertiesView::letters)
				.orElseGet(() -> subject.elements().size() == 1 ? ElementText.of(subject.elements().get(0))
						: NLS.bind(Messages.PropertiesView_several, subject.elements().size())));
	}

	private static String letters(TextRange range) {
		String text = range.wording().getText();
		return NLS.bind(Messages.PropertiesView_letters, new Object[] { letters(text.substring(range.start(), range.end())),
				letters(text), ElementText.of(range.wording()) });
	}

	/** What a reader takes for one letter counts as one; line ends do not. */
	private static long letters(String text) {
		BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
		characters.setText(text);
		long letters = 0;
		for (int at = characters.first(), end = characters.next(); end != BreakIterator.DONE; at = end, end = characters.next()) {
			letters += text.charAt(at) == '\n' ? 0 : 1;
		}
		return letters;
	}

	@Override
	public void jobChanged() {
		if (bench() != null && !subject.isSelectedOn(bench())) {
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
		if (!layout.isDue() && !subject.elements().isEmpty()) {
			showWanted();
			forms.forEach(Form::refresh);
			showHeading();
		}
	}

	/** The field that is called by a name on the screen; the section that it is in is folded out. */
	public Control field(String name) {
		for (Form form : forms) {
			Control found = find(form.body(), name);
			if (found != null) {
				form.setFolded(false);
				return found;
			}
		}
		throw new IllegalArgumentException(name);
	}

	/** The heading of the section that is called by a name on the screen. */
	public Control section(String title) {
		return forms.stream().map(Form::heading).filter(each -> each.title().equals(title)).findFirst().orElseThrow();
	}

	/** Whether fields of that section are seen. */
	public boolean isFolded(String title) {
		return ((Heading) section(title)).isFolded();
	}

	/** Folds that section away or out, as a click on its heading does. */
	public void setFolded(String title, boolean folded) {
		forms.stream().filter(form -> form.heading().title().equals(title)).forEach(form -> form.setFolded(folded));
	}

	/** What it is about, as its first line says. */
	public String heading() {
		return heading.getText();
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
