package org.frisket.app.internal.tour;

import org.frisket.ui.views.Views;

/** What the tour tells, one after the other. */
enum TourStep {

	WORDING(Messages.TourStep_wordingTitle, Messages.TourStep_wording, null),
	PROPERTIES(Messages.TourStep_propertiesTitle, Messages.TourStep_properties, Views.PROPERTIES_ID),
	MATS(Messages.TourStep_matsTitle, Messages.TourStep_mats, Views.STACK_ID),
	MAKEREADY(Messages.TourStep_makereadyTitle, Messages.TourStep_makeready, Views.MAKEREADY_ID),
	EXPORT(Messages.TourStep_exportTitle, Messages.TourStep_export, null);

	private final String title;
	private final String text;
	private final String view;

	TourStep(String title, String text, String view) {
		this.title = title;
		this.text = text;
		this.view = view;
	}

	String title() {
		return title;
	}

	String text() {
		return text;
	}

	/** The view it is about; null if it is about none. */
	String view() {
		return view;
	}

	/** From 1. */
	int number() {
		return ordinal() + 1;
	}

	boolean isFirst() {
		return ordinal() == 0;
	}

	boolean isLast() {
		return number() == values().length;
	}

	TourStep next() {
		return values()[Math.min(values().length - 1, ordinal() + 1)];
	}

	TourStep back() {
		return values()[Math.max(0, ordinal() - 1)];
	}
}
