package org.frisket.model.migration;

import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.XMLFilterImpl;

/**
 * Version 0, used before the first release, called a wording's height {@code capHeight}, and a crease {@code score}.
 */
final class CapHeightToHeight implements Migration {

	@Override
	public int from() {
		return 0;
	}

	@Override
	public XMLFilterImpl filter() {
		return new AttributeRewriter() {

			@Override
			protected void rewrite(String name, String type, AttributesImpl attributes) {
				if (name.equals("elements") && type.equals("Wording")) {
					rename(attributes, "capHeight", "height");
				} else if (name.equals("operations")) {
					replace(attributes, "kind", "score", "crease");
				}
			}
		};
	}
}
