package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangeCombination;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/** How the selected combinations are made, and of what. */
final class CombinationForm extends KindForm {

	private static final int COLUMNS = 3;
	private static final int SPACE_PX = 4;

	private final Composite parts;
	private List<String> listed = List.of();

	CombinationForm(Composite parent, Subject subject) {
		super(parent, Messages.CombinationForm_title, subject);
		add(new Choice<>(row(Messages.CombinationForm_rule), List.of(CombinationRule.values()), ElementText::rule,
				() -> Subject.common(combinations(), Combination::getRule),
				rule -> subject.execute(ChangeCombination.rule(combinations(), rule))));
		parts = new Composite(body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(SPACE_PX, SPACE_PX).applyTo(parts);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(parts);
		add(new Field() {

			@Override
			public void refresh() {
				showParts();
			}

			@Override
			public void reset() {
				showParts();
			}
		});
	}

	private List<Combination> combinations() {
		return all(Combination.class);
	}

	/** In their order, which counts; of a single combination only. */
	private void showParts() {
		List<Combination> one = combinations();
		List<String> wanted = new ArrayList<>();
		if (one.size() == 1) {
			one.get(0).getParts().forEach(part -> wanted.add(part.getId() + ' ' + ElementText.of(part)));
			wanted.add(one.get(0).getId());
		}
		if (wanted.equals(listed)) {
			return;
		}
		listed = wanted;
		for (var child : parts.getChildren()) {
			child.dispose();
		}
		if (one.size() == 1) {
			for (int i = 0; i < one.get(0).getParts().size(); i++) {
				addPart(one.get(0), one.get(0).getParts().get(i), i);
			}
		}
		Form.layout(parts);
	}

	private void addPart(Combination combination, Element part, int place) {
		Label name = label(parts, NLS.bind(Messages.CombinationForm_part, place + 1, ElementText.of(part)));
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(name);
		Button first = button(Messages.CombinationForm_first, Messages.CombinationForm_firstTip, place,
				ChangeCombination.first(combination, part));
		first.setEnabled(place > 0);
		List<Element> others = new ArrayList<>(combination.getParts());
		others.remove(part);
		Button out = button(Messages.CombinationForm_out, Messages.CombinationForm_outTip, place,
				ChangeCombination.parts(combination, others));
		out.setEnabled(!others.isEmpty());
	}

	private Button button(String text, String tip, int place, Edit edit) {
		Button button = new Button(parts, SWT.PUSH);
		button.setText(text);
		button.setData(NAME, NLS.bind(Messages.CombinationForm_part, place + 1, text));
		button.setToolTipText(tip);
		button.addListener(SWT.Selection, event -> subject.execute(edit));
		return button;
	}

	@Override
	public boolean isWanted() {
		return !combinations().isEmpty();
	}
}
