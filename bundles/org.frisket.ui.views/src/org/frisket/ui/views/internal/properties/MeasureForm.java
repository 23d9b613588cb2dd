package org.frisket.ui.views.internal.properties;

import java.text.NumberFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.model.Element;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.LengthText;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/** What the selection measures, to be read only: of what was worked out last, and measured in the background. */
final class MeasureForm extends Form {

	private static final String DEGREES = "\u00b0"; //$NON-NLS-1$

	private final Subject subject;
	private final MeasuresMade measures;

	MeasureForm(Composite parent, Subject subject) {
		super(parent, Messages.MeasureForm_title, true);
		this.subject = subject;
		measures = new MeasuresMade(parent.getDisplay(), this::refresh);
		parent.addListener(SWT.Dispose, event -> measures.close());
		row(Messages.MeasureForm_area, sum -> sum.area() > 0 ? area(sum.area()) : null);
		row(Messages.MeasureForm_length, sum -> LengthText.of(sum.length()));
		row(Messages.MeasureForm_pieces, sum -> number(sum.count(RegionMeasures::pieces)));
		row(Messages.MeasureForm_holes, sum -> number(sum.count(RegionMeasures::holes)));
		row(Messages.MeasureForm_nodes, sum -> number(sum.count(RegionMeasures::nodes)));
		row(Messages.MeasureForm_smallestBox, sum -> sum.only().flatMap(RegionMeasures::smallestBox)
				.map(box -> LengthText.size(box.wide(), box.narrow())).orElse(null));
		row(Messages.MeasureForm_thinnest,
				sum -> sum.least(each -> each.thinnest().map(width -> width.mm())).map(LengthText::of).orElse(null));
		row(Messages.MeasureForm_gap,
				sum -> sum.least(each -> each.narrowestGap().map(width -> width.mm())).map(LengthText::of).orElse(null));
		row(Messages.MeasureForm_sharpest, sum -> sum.least(each -> each.sharpest().map(corner -> corner.angle()))
				.map(angle -> number(angle) + DEGREES).orElse(null));
		row(Messages.MeasureForm_centre, sum -> sum.only().flatMap(RegionMeasures::centre)
				.map(centre -> LengthText.place(centre.x(), centre.y())).orElse(null));
	}

	/** @param text of all that is selected; null where there is nothing to tell */
	private void row(String name, Function<Sum, String> text) {
		Label label = new Label(row(name), SWT.NONE);
		fill(label);
		label.setData(NAME, name);
		add(new Field() {

			@Override
			public void refresh() {
				String shown = heading().isFolded() ? "" //$NON-NLS-1$
						: measured().map(sum -> Objects.requireNonNullElse(text.apply(sum), Messages.MeasureForm_none))
								.orElse(Messages.MeasureForm_soon);
				if (!shown.equals(label.getText())) {
					label.setText(shown);
				}
			}

			@Override
			public void reset() {
				refresh();
			}
		});
	}

	/** Empty while something of the selection is not measured yet, which asks for it. */
	private Optional<Sum> measured() {
		PreparedJob prepared = subject.bench() == null ? null : subject.bench().prepared().orElse(null);
		if (prepared == null) {
			return Optional.empty();
		}
		List<PreparedElement> elements = subject.elements().stream().map(Element::getId).filter(Objects::nonNull)
				.flatMap(id -> prepared.element(id).stream()).toList();
		List<RegionMeasures> made = elements.stream().map(measures::of).filter(Objects::nonNull).toList();
		return elements.size() == subject.elements().size() && made.size() == elements.size() ? Optional.of(new Sum(made))
				: Optional.empty();
	}

	private static String area(double square) {
		LengthUnit unit = LengthUnit.shown();
		double scale = unit.fromMillimetres(1);
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(unit.decimals() - 1);
		format.setMaximumFractionDigits(unit.decimals() - 1);
		return format.format(square * scale * scale) + ' ' + unit.symbol() + '\u00b2';
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(1);
		return format.format(value);
	}

	/** Several elements as one. */
	private record Sum(List<RegionMeasures> each) {

		double area() {
			return each.stream().mapToDouble(RegionMeasures::area).sum();
		}

		double length() {
			return each.stream().mapToDouble(RegionMeasures::length).sum();
		}

		int count(Function<RegionMeasures, Integer> value) {
			return each.stream().mapToInt(value::apply).sum();
		}

		Optional<Double> least(Function<RegionMeasures, Optional<Double>> value) {
			return each.stream().map(value).flatMap(Optional::stream).min(Double::compare);
		}

		Optional<RegionMeasures> only() {
			return each.size() == 1 ? Optional.of(each.get(0)) : Optional.empty();
		}
	}
}
