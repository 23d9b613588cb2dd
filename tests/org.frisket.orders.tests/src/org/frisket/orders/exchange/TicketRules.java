package org.frisket.orders.exchange;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What an XJDF ticket must be like, as far as it goes: children and their order, attributes and their types. A table of
 * facts of the published schema (cip4/XJDF-Schema, xjdf.xsd, November 2025); the name of a Person is from memory. It knows
 * nothing of the writer.
 */
final class TicketRules {

	private static final String NAMESPACE = "http://www.CIP4.org/JDFSchema_2_0";

	private static final String ANY = "(?s).*";
	private static final String TOKEN = "[\\p{L}\\p{N}._:-]+";
	private static final String NUMBER = "-?\\d+(\\.\\d+)?";
	private static final String TIME = "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(Z|[+-]\\d\\d:\\d\\d)";
	/** Operators of PDF paths, each with its numbers before it. */
	private static final String PATH = "(?:" + NUMBER + " " + NUMBER + " m(?: (?:" + NUMBER + " " + NUMBER + " l|(?:"
			+ NUMBER + " ){6}c))*(?: h)?(?: (?=" + NUMBER + ")|$))+";
	private static final String MEDIA = "Paper|Vinyl|SelfAdhesive|Film|Textile";

	/** @param children in their order, each with how often: ? at most once, * any number, + at least once, nothing once */
	private record Rule(List<String> children, Map<String, String> required, Map<String, String> optional) {
	}

	private static Rule rule(String children, Map<String, String> required, Map<String, String> optional) {
		return new Rule(children.isEmpty() ? List.of() : List.of(children.split(" ")), required, optional);
	}

	private static final Map<String, Rule> RULES = Map.ofEntries(
			Map.entry("XJDF", rule("AuditPool? Comment* GeneralID* ProductList? ResourceSet*",
					Map.of("JobID", TOKEN, "Types", TOKEN + "( " + TOKEN + ")*"), Map.of("Version", "2\\.[0-3]"))),
			Map.entry("AuditPool", rule("AuditCreated*", Map.of(), Map.of())),
			Map.entry("AuditCreated", rule("Header", Map.of(), Map.of())),
			Map.entry("Header", rule("", Map.of("DeviceID", TOKEN, "Time", TIME), Map.of())),
			Map.entry("Comment", rule("", Map.of(), Map.of())),
			Map.entry("ProductList", rule("Product*", Map.of(), Map.of())),
			Map.entry("Product", rule("Intent*", Map.of(), Map.of("Amount", "[1-9]\\d*", "IsRoot", "true|false"))),
			Map.entry("Intent", rule("MediaIntent? ShapeCuttingIntent?", Map.of("Name", TOKEN), Map.of())),
			Map.entry("MediaIntent",
					rule("", Map.of("MediaType", MEDIA), Map.of("Thickness", NUMBER, "Weight", NUMBER))),
			Map.entry("ShapeCuttingIntent", rule("ShapeCut+", Map.of(), Map.of())),
			Map.entry("ShapeCut", rule("", Map.of("ShapeType", "Line|Path|Rectangular|Round|RoundedRectangle"),
					Map.of("CutType", "Cut|Perforate", "CutDepth", "Full|Partial", "CutPath", PATH))),
			Map.entry("ResourceSet", rule("Resource*", Map.of("Name", TOKEN), Map.of("Usage", "Input|Output"))),
			Map.entry("Resource", rule("AmountPool? Part* NodeInfo? CustomerInfo? Contact? Media? RunList? DigitalPrintingParams? "
					+ "ShapeCuttingParams? Component?", Map.of(), Map.of("DescriptiveName", ANY, "Status", "Available|Unavailable"))),
			Map.entry("AmountPool", rule("PartAmount*", Map.of(), Map.of())),
			Map.entry("PartAmount", rule("", Map.of(), Map.of("Amount", NUMBER, "Waste", NUMBER))),
			Map.entry("NodeInfo", rule("", Map.of(), Map.of("Start", TIME, "End", TIME, "LastEnd", TIME, "Status",
					"Waiting|Setup|InProgress|Cleanup|Suspended|Stopped|Completed|Aborted"))),
			Map.entry("CustomerInfo", rule("", Map.of(),
					Map.of("CustomerID", TOKEN, "CustomerJobName", ANY, "CustomerOrderID", TOKEN))),
			Map.entry("Contact", rule("Address? ComChannel* Company? Person?", Map.of(), Map.of())),
			Map.entry("Address", rule("AddressLine*", Map.of(), Map.of("Street", ANY))),
			Map.entry("AddressLine", rule("", Map.of(), Map.of())),
			Map.entry("ComChannel", rule("", Map.of("ChannelType", TOKEN, "Locator", "(tel|mailto):.+"), Map.of())),
			Map.entry("Company", rule("", Map.of("OrganizationName", ANY), Map.of())),
			Map.entry("Person", rule("", Map.of(), Map.of("FamilyName", ANY))),
			Map.entry("Media", rule("", Map.of("MediaType", MEDIA),
					Map.of("Dimension", NUMBER + " " + NUMBER, "Thickness", NUMBER, "Weight", NUMBER))),
			Map.entry("DigitalPrintingParams",
					rule("", Map.of(), Map.of("Sides", "OneSidedFront|OneSidedBack|TwoSided|Unprinted"))),
			Map.entry("RunList", rule("FileSpec?", Map.of(), Map.of())),
			Map.entry("FileSpec", rule("", Map.of(), Map.of("URL", "[\\x21-\\x7E]+"))),
			Map.entry("ShapeCuttingParams", rule("Shape*", Map.of(), Map.of())),
			Map.entry("Shape", rule("", Map.of("ShapeType", "Path|Rectangular|Round|RoundedRectangle"),
					Map.of("CutBox", NUMBER + "( " + NUMBER + "){3}", "CutPath", PATH))),
			Map.entry("Component", rule("", Map.of(), Map.of())));

	private final List<String> wrong = new ArrayList<>();

	private TicketRules() {
	}

	/** @throws Exception if it is not well-formed */
	static Document parse(byte[] xml) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setNamespaceAware(true);
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
	}

	/** What is wrong with a ticket. */
	static List<String> check(Document ticket) {
		TicketRules rules = new TicketRules();
		if (!"XJDF".equals(ticket.getDocumentElement().getLocalName())) {
			rules.wrong.add("root");
		}
		rules.check(ticket.getDocumentElement());
		return rules.wrong;
	}

	static List<Element> children(Element of) {
		List<Element> children = new ArrayList<>();
		for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
			if (node instanceof Element element) {
				children.add(element);
			}
		}
		return children;
	}

	private void check(Element element) {
		String name = element.getLocalName();
		Rule rule = RULES.get(name);
		if (rule == null || !NAMESPACE.equals(element.getNamespaceURI())) {
			wrong.add("unknown element " + element.getNodeName());
			return;
		}
		rule.required().keySet().stream().filter(attribute -> !element.hasAttribute(attribute))
				.forEach(attribute -> wrong.add(name + " lacks " + attribute));
		for (int i = 0; i < element.getAttributes().getLength(); i++) {
			Node attribute = element.getAttributes().item(i);
			String type = rule.required().getOrDefault(attribute.getNodeName(), rule.optional().get(attribute.getNodeName()));
			if (!attribute.getNodeName().startsWith("xmlns") && (type == null || !attribute.getNodeValue().matches(type))) {
				wrong.add(name + "@" + attribute.getNodeName() + "=" + attribute.getNodeValue());
			}
		}
		StringBuilder order = new StringBuilder();
		rule.children().forEach(child -> order.append("(?:").append(child.replaceAll("[?*+]$", "")).append(" )")
				.append(child.matches(".*[?*+]$") ? child.substring(child.length() - 1) : ""));
		StringBuilder there = new StringBuilder();
		children(element).forEach(child -> there.append(child.getLocalName()).append(' '));
		if (!there.toString().matches(order.toString())) {
			wrong.add(name + " has " + there);
		}
		children(element).forEach(this::check);
	}
}
