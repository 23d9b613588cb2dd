package org.frisket.imports.svg;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.batik.css.parser.Parser;
import org.eclipse.osgi.util.NLS;
import org.frisket.imports.Remarks;
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

	private record Rule(Selector selector, int weight, int order, Map<String, String> declarations,
			Map<String, String> important) {
	}

	private final Remarks remarks;
	private final List<Rule> rules = new ArrayList<>();
	private final Map<String, Map<String, String>> inline = new HashMap<>();

	Cascade(Node root, Remarks remarks) {
		this.remarks = remarks;
		collect(root);
		rules.sort(Comparator.comparingInt(Rule::weight).thenComparingInt(Rule::order));
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
		Map<String, String> declared = new HashMap<>();
		for (Map.Entry<String, String> attribute : node.attributes().entrySet()) {
			if (Style.isProperty(attribute.getKey()) && !attribute.getKey().equals("transform")) {
				declared.put(attribute.getKey(), attribute.getValue().strip());
			}
		}
		List<Rule> matching = rules.stream().filter(rule -> Selectors.matches(rule.selector(), node)).toList();
		matching.forEach(rule -> declared.putAll(rule.declarations()));
		String style = node.attribute("style");
		if (style != null) {
			declared.putAll(inline.computeIfAbsent(style, Cascade::declarations));
		}
		matching.forEach(rule -> declared.putAll(rule.important()));
		return parent.child(declared);
	}

	private static Map<String, String> declarations(String text) {
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
		private final Map<String, String> declarations = new HashMap<>();
		private final Map<String, String> important = new HashMap<>();
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
			declarations.clear();
			important.clear();
		}

		@Override
		public void endSelector(SelectorList selectors) {
			if (cascade == null || otherMedia > 0 || declarations.isEmpty() && important.isEmpty()) {
				return;
			}
			for (int i = 0; i < selectors.getLength(); i++) {
				Selector selector = selectors.item(i);
				if (Selectors.isKnown(selector)) {
					cascade.rules.add(new Rule(selector, Selectors.specificity(selector), cascade.rules.size(),
							Map.copyOf(declarations), Map.copyOf(important)));
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
			declarations.clear();
		}

		@Override
		public void endFontFace() {
			declarations.clear();
		}
	}
}
