package org.frisket.imports.svg;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.batik.css.parser.Parser;
import org.eclipse.osgi.util.NLS;
import org.frisket.imports.Remarks;
import org.frisket.imports.svg.Rules.Rule;
import org.frisket.imports.svg.Style.Declarations;
import org.w3c.css.sac.CSSException;
import org.w3c.css.sac.CSSParseException;
import org.w3c.css.sac.DocumentHandler;
import org.w3c.css.sac.ErrorHandler;
import org.w3c.css.sac.InputSource;
import org.w3c.css.sac.LexicalUnit;
import org.w3c.css.sac.SACMediaList;
import org.w3c.css.sac.Selector;
import org.w3c.css.sac.SelectorList;

/**
 * Tells each element its style: from its attributes, the style sheets in the file by their weight, and its style
 * attribute, in this order (CSS 2.1, section 6.4; SVG 1.1, section 6.4). No sheet outside the file is fetched.
 */
final class Cascade {

	private final Remarks remarks;
	private final Rules rules = new Rules();
	/** By what style attributes say; drawings say the same again and again. */
	private final Map<String, Declarations> inline = new HashMap<>();

	Cascade(Node root, Remarks remarks) {
		this.remarks = remarks;
		collect(root);
	}

	private void collect(Node node) {
		if (node.is("style")) {
			String type = node.attribute("type", "text/css");
			if (type.isBlank() || type.contains("css")) {
				read(node);
			}
		}
		node.children().forEach(this::collect);
	}

	private void read(Node sheet) {
		Parser parser = new Parser();
		parser.setDocumentHandler(new Reader(this, sheet));
		parser.setErrorHandler(new Tolerant());
		try {
			parser.parseStyleSheet(new InputSource(new StringReader(sheet.allText())));
		} catch (CSSException | IOException e) {
			remarks.once(sheet.place(), NLS.bind(Messages.Cascade_sheet, e.getMessage()));
		}
	}

	/** The style of an element whose parent has the given one. */
	Style of(Node node, Style parent) {
		Declarations declared = new Declarations();
		node.eachAttribute((name, value) -> {
			if (Style.isProperty(name) && !name.equals("transform")) {
				declared.put(name, value.strip());
			}
		});
		List<Rule> matching = rules.matching(node);
		matching.forEach(rule -> declared.putAll(rule.declarations()));
		String style = node.attribute("style");
		if (style != null) {
			declared.putAll(inline.computeIfAbsent(style, Cascade::declarations));
		}
		matching.forEach(rule -> declared.putAll(rule.important()));
		return parent.child(declared);
	}

	private static Declarations declarations(String text) {
		Reader reader = new Reader();
		Parser parser = new Parser();
		parser.setDocumentHandler(reader);
		parser.setErrorHandler(new Tolerant());
		try {
			parser.parseStyleDeclaration(text);
		} catch (CSSException | IOException e) {
			// what was read until then holds
		}
		reader.declarations.putAll(reader.important);
		return reader.declarations;
	}

	/** What is wrong in a sheet is passed over, as CSS asks. */
	private static final class Tolerant implements ErrorHandler {

		@Override
		public void warning(CSSParseException e) {
			// passed over
		}

		@Override
		public void error(CSSParseException e) {
			// passed over
		}

		@Override
		public void fatalError(CSSParseException e) {
			// passed over
		}
	}

	/** Gathers declarations; those of a sheet with their selectors. */
	private static final class Reader implements DocumentHandler {

		private final Cascade cascade;
		private final Node sheet;
		private Declarations declarations = new Declarations();
		private Declarations important = new Declarations();
		/** Rules for other media than screens have no effect. */
		private int otherMedia;

		Reader() {
			cascade = null;
			sheet = null;
		}

		Reader(Cascade cascade, Node sheet) {
			this.cascade = cascade;
			this.sheet = sheet;
		}

		@Override
		public void property(String name, LexicalUnit value, boolean isImportant) {
			if (Style.isProperty(name)) {
				(isImportant ? important : declarations).put(name, LexicalText.of(value).strip());
			}
		}

		@Override
		public void startSelector(SelectorList selectors) {
			declarations = new Declarations();
			important = new Declarations();
		}

		@Override
		public void endSelector(SelectorList selectors) {
			if (cascade == null || otherMedia > 0 || declarations.isEmpty() && important.isEmpty()) {
				return;
			}
			for (int i = 0; i < selectors.getLength(); i++) {
				Selector selector = selectors.item(i);
				if (Selectors.isKnown(selector)) {
					cascade.rules.add(selector, declarations, important);
				} else {
					cascade.remarks.once(sheet.place(), NLS.bind(Messages.Cascade_selector, selector));
				}
			}
		}

		@Override
		public void startMedia(SACMediaList media) {
			boolean screen = false;
			for (int i = 0; i < media.getLength(); i++) {
				screen |= media.item(i).equals("all") || media.item(i).equals("screen");
			}
			if (!screen || otherMedia > 0) {
				otherMedia++;
			}
		}

		@Override
		public void endMedia(SACMediaList media) {
			otherMedia = Math.max(0, otherMedia - 1);
		}

		@Override
		public void startDocument(InputSource source) {
			// nothing to do
		}

		@Override
		public void endDocument(InputSource source) {
			// nothing to do
		}

		@Override
		public void comment(String text) {
			// nothing to do
		}

		@Override
		public void ignorableAtRule(String atRule) {
			// nothing to do
		}

		@Override
		public void namespaceDeclaration(String prefix, String uri) {
			// nothing to do
		}

		@Override
		public void importStyle(String uri, SACMediaList media, String defaultNamespaceURI) {
			if (cascade != null) {
				cascade.remarks.once(sheet.place(), NLS.bind(Messages.Addresses_remote, uri));
			}
		}

		@Override
		public void startPage(String name, String pseudoPage) {
			// nothing to do
		}

		@Override
		public void endPage(String name, String pseudoPage) {
			// nothing to do
		}

		@Override
		public void startFontFace() {
			declarations = new Declarations();
		}

		@Override
		public void endFontFace() {
			declarations = new Declarations();
		}
	}
}
