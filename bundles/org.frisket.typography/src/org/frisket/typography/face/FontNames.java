package org.frisket.typography.face;

/**
 * What a font calls itself. Family and style are the typographic ones where the font has them (name identifiers 16
 * and 17 of ISO/IEC 14496-22), else the plain ones (1 and 2). None is null; a missing one is empty.
 */
public record FontNames(String family, String style, String fullName, String postScriptName) {

	/** Family and style, without a style that says nothing. */
	public String label() {
		return style.isEmpty() || isPlain() ? family : family + " " + style;
	}

	/** Whether this is the upright, normal weight of its family. */
	public boolean isPlain() {
		return style.isEmpty() || style.equalsIgnoreCase("Regular") || style.equalsIgnoreCase("Book")
				|| style.equalsIgnoreCase("Roman") || style.equalsIgnoreCase("Normal");
	}

	/** The names of a variable font at one of its named instances. */
	public FontNames ofInstance(NamedInstance instance) {
		return new FontNames(family, instance.name(), family + " " + instance.name(), instance.postScriptName());
	}
}
