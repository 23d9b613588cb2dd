package org.frisket.model.internal;

import java.io.CharConversionException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;

import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.frisket.model.UnreadableJobException;
import org.frisket.model.impl.FrisketPackageImpl;
import org.xml.sax.SAXParseException;

/** Says in plain words why a file could not be read. */
public final class ReadingTrouble {

	private static final int LONGEST_QUOTE = 40;

	private ReadingTrouble() {
	}

	static UnreadableJobException explain(String file, byte[] content, JobGate gate, Exception trouble) {
		for (Throwable at = trouble; at != null; at = at.getCause()) {
			if (at instanceof SAXParseException e) {
				return syntax(file, content, e);
			}
			if (at instanceof CharConversionException) {
				return badByte(file, new String(content, StandardCharsets.UTF_8), trouble);
			}
			if (at instanceof UnsupportedEncodingException) {
				return new UnreadableJobException(file, 1, 0, "its encoding '" + at.getMessage() + "' is not known",
						trouble);
			}
		}
		for (Throwable at = trouble; at != null; at = at.getCause()) {
			if (at instanceof XMIException e) {
				int line = e.getLine();
				if (line <= 0 && e instanceof IllegalValueException illegal) {
					line = gate.lineOf(EcoreUtil.getID(illegal.getObject()));
				}
				return new UnreadableJobException(file, line, Math.max(0, e.getColumn()), meaning(e), trouble);
			}
		}
		return new UnreadableJobException(file, 0, 0, "it cannot be understood (" + trouble + ")", trouble);
	}

	private static UnreadableJobException syntax(String file, byte[] content, SAXParseException e) {
		int line = e.getLineNumber();
		int column = e.getColumnNumber();
		if (!(e instanceof Refusal)) {
			String text = new String(content, StandardCharsets.UTF_8);
			String[] lines = lines(text);
			// The parser may step back to where a tag began, but no tag ends after a cut.
			boolean atEnd = line < 1 || line == lines.length && lines[line - 1].indexOf('>', column - 1) < 0;
			if (text.stripLeading().startsWith("<") && atEnd) {
				return cutOff(file, text, e);
			}
		}
		return new UnreadableJobException(file, line, column, syntax(e, content), e);
	}

	private static String syntax(SAXParseException e, byte[] content) {
		if (e instanceof Refusal) {
			return e.getMessage();
		}
		String message = String.valueOf(e.getMessage());
		if (message.contains("DOCTYPE")) {
			return "it declares a document type, which a job file must not";
		}
		String text = new String(content, StandardCharsets.UTF_8);
		if (!text.stripLeading().startsWith("<") && !text.startsWith("\uFEFF")) {
			return "this is not a job file: it is not XML";
		}
		return "the XML is damaged: " + message;
	}

	private static UnreadableJobException badByte(String file, String text, Exception trouble) {
		int bad = text.indexOf('\uFFFD');
		if (bad == text.length() - 1) {
			return cutOff(file, text, trouble);
		}
		int line = lines(text.substring(0, Math.max(0, bad))).length;
		return new UnreadableJobException(file, line, 0, "a letter is damaged: the bytes are not UTF-8", trouble);
	}

	private static UnreadableJobException cutOff(String file, String text, Exception trouble) {
		String[] lines = lines(text);
		return new UnreadableJobException(file, lines.length, lines[lines.length - 1].length() + 1,
				"the file is cut off in the middle", trouble);
	}

	private static String[] lines(String text) {
		return text.split("\r\n|\r|\n", -1);
	}

	private static String meaning(XMIException e) {
		if (e instanceof UnresolvedReferenceException unresolved) {
			return "it refers to '" + unresolved.getReference() + "', but nothing in the job has that id";
		}
		if (e instanceof IllegalValueException illegal) {
			return value(illegal);
		}
		if (e instanceof ClassNotFoundException unknown) {
			return "'" + unknown.getName()
					+ "' is nothing this Frisket knows; the job may have been written by a newer one";
		}
		if (e instanceof PackageNotFoundException unknown) {
			return "the namespace '" + unknown.uri() + "' is nothing this Frisket knows";
		}
		return String.valueOf(e.getMessage());
	}

	private static String value(IllegalValueException e) {
		EStructuralFeature feature = e.getFeature();
		if (feature instanceof EReference) {
			return "what it gives as " + feature.getName() + " cannot stand there";
		}
		return feature.getName() + " is '" + quoted(e.getValue()) + "', which is " + expected(feature.getEType());
	}

	private static String expected(EClassifier type) {
		if (type instanceof EEnum choices) {
			StringBuilder names = new StringBuilder("none of ");
			choices.getELiterals().forEach(literal -> names.append(literal.getLiteral()).append(", "));
			return names.substring(0, names.length() - 2);
		}
		if (type == FrisketPackageImpl.Literals.DATE) {
			return "not a day such as 2031-05-17";
		}
		if (type == FrisketPackageImpl.Literals.MOMENT) {
			return "not a time such as 2031-05-17T09:30:00Z";
		}
		if (type == FrisketPackageImpl.Literals.MATRIX) {
			return "not six numbers parted by blanks";
		}
		return type.getName().equals("EInt") ? "not a whole number" : "not a number";
	}

	private static String quoted(Object value) {
		String text = String.valueOf(value);
		return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
	}
}
