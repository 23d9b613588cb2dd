/**
 */
package org.frisket.model.impl;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.frisket.model.Alignment;
import org.frisket.model.Bar;
import org.frisket.model.Bridge;
import org.frisket.model.Flow;
import org.frisket.model.FontRef;
import org.frisket.model.IslandBridges;
import org.frisket.model.Nudge;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Wording</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getText <em>Text</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getFont <em>Font</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getLineSpacing <em>Line Spacing</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getTracking <em>Tracking</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getAlignment <em>Alignment</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isKerning <em>Kerning</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isLigatures <em>Ligatures</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isJoined <em>Joined</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getTouch <em>Touch</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getFeatures <em>Features</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getAxes <em>Axes</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getWordSpacing <em>Word Spacing</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getMeasure <em>Measure</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getSpans <em>Spans</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getNudges <em>Nudges</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getFlow <em>Flow</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getArcRadius <em>Arc Radius</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getArcAngle <em>Arc Angle</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isArcInside <em>Arc Inside</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isArcInward <em>Arc Inward</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getPath <em>Path</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getPathStart <em>Path Start</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isPathReversed <em>Path Reversed</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isPathHanging <em>Path Hanging</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getBoxWidth <em>Box Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getBoxHeight <em>Box Height</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getEmbolden <em>Embolden</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getBars <em>Bars</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#isTieMarks <em>Tie Marks</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getTieWidth <em>Tie Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getStencil <em>Stencil</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getPenStyle <em>Pen Style</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getHatchSpacing <em>Hatch Spacing</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getHatchAngle <em>Hatch Angle</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getHatchInset <em>Hatch Inset</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getBridges <em>Bridges</em>}</li>
 *   <li>{@link org.frisket.model.impl.WordingImpl#getIslands <em>Islands</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WordingImpl extends ElementImpl implements Wording {
	/**
	 * The default value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected static final String TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected String text = TEXT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFont() <em>Font</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFont()
	 * @generated
	 * @ordered
	 */
	protected FontRef font;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected double height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLineSpacing() <em>Line Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final double LINE_SPACING_EDEFAULT = 1.6;

	/**
	 * The cached value of the '{@link #getLineSpacing() <em>Line Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineSpacing()
	 * @generated
	 * @ordered
	 */
	protected double lineSpacing = LINE_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getTracking() <em>Tracking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTracking()
	 * @generated
	 * @ordered
	 */
	protected static final double TRACKING_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTracking() <em>Tracking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTracking()
	 * @generated
	 * @ordered
	 */
	protected double tracking = TRACKING_EDEFAULT;

	/**
	 * The default value of the '{@link #getAlignment() <em>Alignment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlignment()
	 * @generated
	 * @ordered
	 */
	protected static final Alignment ALIGNMENT_EDEFAULT = Alignment.LEFT;

	/**
	 * The cached value of the '{@link #getAlignment() <em>Alignment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlignment()
	 * @generated
	 * @ordered
	 */
	protected Alignment alignment = ALIGNMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #isKerning() <em>Kerning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isKerning()
	 * @generated
	 * @ordered
	 */
	protected static final boolean KERNING_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isKerning() <em>Kerning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isKerning()
	 * @generated
	 * @ordered
	 */
	protected boolean kerning = KERNING_EDEFAULT;

	/**
	 * The default value of the '{@link #isLigatures() <em>Ligatures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLigatures()
	 * @generated
	 * @ordered
	 */
	protected static final boolean LIGATURES_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isLigatures() <em>Ligatures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLigatures()
	 * @generated
	 * @ordered
	 */
	protected boolean ligatures = LIGATURES_EDEFAULT;

	/**
	 * The default value of the '{@link #isJoined() <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isJoined()
	 * @generated
	 * @ordered
	 */
	protected static final boolean JOINED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isJoined() <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isJoined()
	 * @generated
	 * @ordered
	 */
	protected boolean joined = JOINED_EDEFAULT;

	/**
	 * The default value of the '{@link #getTouch() <em>Touch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTouch()
	 * @generated
	 * @ordered
	 */
	protected static final double TOUCH_EDEFAULT = 0.3;

	/**
	 * The cached value of the '{@link #getTouch() <em>Touch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTouch()
	 * @generated
	 * @ordered
	 */
	protected double touch = TOUCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getFeatures() <em>Features</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeatures()
	 * @generated
	 * @ordered
	 */
	protected static final String FEATURES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeatures() <em>Features</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeatures()
	 * @generated
	 * @ordered
	 */
	protected String features = FEATURES_EDEFAULT;

	/**
	 * The default value of the '{@link #getAxes() <em>Axes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxes()
	 * @generated
	 * @ordered
	 */
	protected static final String AXES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAxes() <em>Axes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxes()
	 * @generated
	 * @ordered
	 */
	protected String axes = AXES_EDEFAULT;

	/**
	 * The default value of the '{@link #getWordSpacing() <em>Word Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWordSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final double WORD_SPACING_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWordSpacing() <em>Word Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWordSpacing()
	 * @generated
	 * @ordered
	 */
	protected double wordSpacing = WORD_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasure() <em>Measure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasure()
	 * @generated
	 * @ordered
	 */
	protected static final double MEASURE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMeasure() <em>Measure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasure()
	 * @generated
	 * @ordered
	 */
	protected double measure = MEASURE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSpans() <em>Spans</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpans()
	 * @generated
	 * @ordered
	 */
	protected EList<TextSpan> spans;

	/**
	 * The cached value of the '{@link #getNudges() <em>Nudges</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNudges()
	 * @generated
	 * @ordered
	 */
	protected EList<Nudge> nudges;

	/**
	 * The default value of the '{@link #getFlow() <em>Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlow()
	 * @generated
	 * @ordered
	 */
	protected static final Flow FLOW_EDEFAULT = Flow.STRAIGHT;

	/**
	 * The cached value of the '{@link #getFlow() <em>Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlow()
	 * @generated
	 * @ordered
	 */
	protected Flow flow = FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getArcRadius() <em>Arc Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArcRadius()
	 * @generated
	 * @ordered
	 */
	protected static final double ARC_RADIUS_EDEFAULT = 50.0;

	/**
	 * The cached value of the '{@link #getArcRadius() <em>Arc Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArcRadius()
	 * @generated
	 * @ordered
	 */
	protected double arcRadius = ARC_RADIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getArcAngle() <em>Arc Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArcAngle()
	 * @generated
	 * @ordered
	 */
	protected static final double ARC_ANGLE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getArcAngle() <em>Arc Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArcAngle()
	 * @generated
	 * @ordered
	 */
	protected double arcAngle = ARC_ANGLE_EDEFAULT;

	/**
	 * The default value of the '{@link #isArcInside() <em>Arc Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isArcInside()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ARC_INSIDE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isArcInside() <em>Arc Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isArcInside()
	 * @generated
	 * @ordered
	 */
	protected boolean arcInside = ARC_INSIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #isArcInward() <em>Arc Inward</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isArcInward()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ARC_INWARD_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isArcInward() <em>Arc Inward</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isArcInward()
	 * @generated
	 * @ordered
	 */
	protected boolean arcInward = ARC_INWARD_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected Outline path;

	/**
	 * The default value of the '{@link #getPathStart() <em>Path Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathStart()
	 * @generated
	 * @ordered
	 */
	protected static final double PATH_START_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getPathStart() <em>Path Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathStart()
	 * @generated
	 * @ordered
	 */
	protected double pathStart = PATH_START_EDEFAULT;

	/**
	 * The default value of the '{@link #isPathReversed() <em>Path Reversed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPathReversed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean PATH_REVERSED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isPathReversed() <em>Path Reversed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPathReversed()
	 * @generated
	 * @ordered
	 */
	protected boolean pathReversed = PATH_REVERSED_EDEFAULT;

	/**
	 * The default value of the '{@link #isPathHanging() <em>Path Hanging</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPathHanging()
	 * @generated
	 * @ordered
	 */
	protected static final boolean PATH_HANGING_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isPathHanging() <em>Path Hanging</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPathHanging()
	 * @generated
	 * @ordered
	 */
	protected boolean pathHanging = PATH_HANGING_EDEFAULT;

	/**
	 * The default value of the '{@link #getBoxWidth() <em>Box Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoxWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double BOX_WIDTH_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getBoxWidth() <em>Box Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoxWidth()
	 * @generated
	 * @ordered
	 */
	protected double boxWidth = BOX_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getBoxHeight() <em>Box Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoxHeight()
	 * @generated
	 * @ordered
	 */
	protected static final double BOX_HEIGHT_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getBoxHeight() <em>Box Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoxHeight()
	 * @generated
	 * @ordered
	 */
	protected double boxHeight = BOX_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEmbolden() <em>Embolden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmbolden()
	 * @generated
	 * @ordered
	 */
	protected static final double EMBOLDEN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getEmbolden() <em>Embolden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmbolden()
	 * @generated
	 * @ordered
	 */
	protected double embolden = EMBOLDEN_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBars() <em>Bars</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBars()
	 * @generated
	 * @ordered
	 */
	protected EList<Bar> bars;

	/**
	 * The default value of the '{@link #isTieMarks() <em>Tie Marks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTieMarks()
	 * @generated
	 * @ordered
	 */
	protected static final boolean TIE_MARKS_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isTieMarks() <em>Tie Marks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTieMarks()
	 * @generated
	 * @ordered
	 */
	protected boolean tieMarks = TIE_MARKS_EDEFAULT;

	/**
	 * The default value of the '{@link #getTieWidth() <em>Tie Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTieWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double TIE_WIDTH_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getTieWidth() <em>Tie Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTieWidth()
	 * @generated
	 * @ordered
	 */
	protected double tieWidth = TIE_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getStencil() <em>Stencil</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencil()
	 * @generated
	 * @ordered
	 */
	protected static final double STENCIL_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getStencil() <em>Stencil</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencil()
	 * @generated
	 * @ordered
	 */
	protected double stencil = STENCIL_EDEFAULT;

	/**
	 * The default value of the '{@link #getPenStyle() <em>Pen Style</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPenStyle()
	 * @generated
	 * @ordered
	 */
	protected static final PenStyle PEN_STYLE_EDEFAULT = PenStyle.OUTLINE;

	/**
	 * The cached value of the '{@link #getPenStyle() <em>Pen Style</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPenStyle()
	 * @generated
	 * @ordered
	 */
	protected PenStyle penStyle = PEN_STYLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHatchSpacing() <em>Hatch Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final double HATCH_SPACING_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getHatchSpacing() <em>Hatch Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchSpacing()
	 * @generated
	 * @ordered
	 */
	protected double hatchSpacing = HATCH_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getHatchAngle() <em>Hatch Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchAngle()
	 * @generated
	 * @ordered
	 */
	protected static final double HATCH_ANGLE_EDEFAULT = 45.0;

	/**
	 * The cached value of the '{@link #getHatchAngle() <em>Hatch Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchAngle()
	 * @generated
	 * @ordered
	 */
	protected double hatchAngle = HATCH_ANGLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHatchInset() <em>Hatch Inset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchInset()
	 * @generated
	 * @ordered
	 */
	protected static final double HATCH_INSET_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHatchInset() <em>Hatch Inset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHatchInset()
	 * @generated
	 * @ordered
	 */
	protected double hatchInset = HATCH_INSET_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBridges() <em>Bridges</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBridges()
	 * @generated
	 * @ordered
	 */
	protected EList<Bridge> bridges;

	/**
	 * The cached value of the '{@link #getIslands() <em>Islands</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIslands()
	 * @generated
	 * @ordered
	 */
	protected EList<IslandBridges> islands;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WordingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.WORDING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText() {
		return text;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText) {
		String oldText = text;
		text = newText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__TEXT, oldText, text));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FontRef getFont() {
		return font;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetFont(FontRef newFont, NotificationChain msgs) {
		FontRef oldFont = font;
		font = newFont;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__FONT, oldFont, newFont);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFont(FontRef newFont) {
		if (newFont != font) {
			NotificationChain msgs = null;
			if (font != null)
				msgs = ((InternalEObject)font).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.WORDING__FONT, null, msgs);
			if (newFont != null)
				msgs = ((InternalEObject)newFont).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.WORDING__FONT, null, msgs);
			msgs = basicSetFont(newFont, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__FONT, newFont, newFont));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(double newHeight) {
		double oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getLineSpacing() {
		return lineSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLineSpacing(double newLineSpacing) {
		double oldLineSpacing = lineSpacing;
		lineSpacing = newLineSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__LINE_SPACING, oldLineSpacing, lineSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTracking() {
		return tracking;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTracking(double newTracking) {
		double oldTracking = tracking;
		tracking = newTracking;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__TRACKING, oldTracking, tracking));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Alignment getAlignment() {
		return alignment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlignment(Alignment newAlignment) {
		Alignment oldAlignment = alignment;
		alignment = newAlignment == null ? ALIGNMENT_EDEFAULT : newAlignment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__ALIGNMENT, oldAlignment, alignment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isKerning() {
		return kerning;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKerning(boolean newKerning) {
		boolean oldKerning = kerning;
		kerning = newKerning;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__KERNING, oldKerning, kerning));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLigatures() {
		return ligatures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLigatures(boolean newLigatures) {
		boolean oldLigatures = ligatures;
		ligatures = newLigatures;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__LIGATURES, oldLigatures, ligatures));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isJoined() {
		return joined;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJoined(boolean newJoined) {
		boolean oldJoined = joined;
		joined = newJoined;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__JOINED, oldJoined, joined));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTouch() {
		return touch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTouch(double newTouch) {
		double oldTouch = touch;
		touch = newTouch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__TOUCH, oldTouch, touch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFeatures() {
		return features;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeatures(String newFeatures) {
		String oldFeatures = features;
		features = newFeatures;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__FEATURES, oldFeatures, features));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAxes() {
		return axes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAxes(String newAxes) {
		String oldAxes = axes;
		axes = newAxes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__AXES, oldAxes, axes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWordSpacing() {
		return wordSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWordSpacing(double newWordSpacing) {
		double oldWordSpacing = wordSpacing;
		wordSpacing = newWordSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__WORD_SPACING, oldWordSpacing, wordSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMeasure() {
		return measure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasure(double newMeasure) {
		double oldMeasure = measure;
		measure = newMeasure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__MEASURE, oldMeasure, measure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<TextSpan> getSpans() {
		if (spans == null) {
			spans = new EObjectContainmentEList<TextSpan>(TextSpan.class, this, FrisketPackageImpl.WORDING__SPANS);
		}
		return spans;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Nudge> getNudges() {
		if (nudges == null) {
			nudges = new EObjectContainmentEList<Nudge>(Nudge.class, this, FrisketPackageImpl.WORDING__NUDGES);
		}
		return nudges;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Flow getFlow() {
		return flow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlow(Flow newFlow) {
		Flow oldFlow = flow;
		flow = newFlow == null ? FLOW_EDEFAULT : newFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__FLOW, oldFlow, flow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getArcRadius() {
		return arcRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArcRadius(double newArcRadius) {
		double oldArcRadius = arcRadius;
		arcRadius = newArcRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__ARC_RADIUS, oldArcRadius, arcRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getArcAngle() {
		return arcAngle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArcAngle(double newArcAngle) {
		double oldArcAngle = arcAngle;
		arcAngle = newArcAngle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__ARC_ANGLE, oldArcAngle, arcAngle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isArcInside() {
		return arcInside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArcInside(boolean newArcInside) {
		boolean oldArcInside = arcInside;
		arcInside = newArcInside;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__ARC_INSIDE, oldArcInside, arcInside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isArcInward() {
		return arcInward;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArcInward(boolean newArcInward) {
		boolean oldArcInward = arcInward;
		arcInward = newArcInward;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__ARC_INWARD, oldArcInward, arcInward));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Outline getPath() {
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPath(Outline newPath) {
		Outline oldPath = path;
		path = newPath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__PATH, oldPath, path));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPathStart() {
		return pathStart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathStart(double newPathStart) {
		double oldPathStart = pathStart;
		pathStart = newPathStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__PATH_START, oldPathStart, pathStart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isPathReversed() {
		return pathReversed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathReversed(boolean newPathReversed) {
		boolean oldPathReversed = pathReversed;
		pathReversed = newPathReversed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__PATH_REVERSED, oldPathReversed, pathReversed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isPathHanging() {
		return pathHanging;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathHanging(boolean newPathHanging) {
		boolean oldPathHanging = pathHanging;
		pathHanging = newPathHanging;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__PATH_HANGING, oldPathHanging, pathHanging));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getBoxWidth() {
		return boxWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBoxWidth(double newBoxWidth) {
		double oldBoxWidth = boxWidth;
		boxWidth = newBoxWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__BOX_WIDTH, oldBoxWidth, boxWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getBoxHeight() {
		return boxHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBoxHeight(double newBoxHeight) {
		double oldBoxHeight = boxHeight;
		boxHeight = newBoxHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__BOX_HEIGHT, oldBoxHeight, boxHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getEmbolden() {
		return embolden;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEmbolden(double newEmbolden) {
		double oldEmbolden = embolden;
		embolden = newEmbolden;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__EMBOLDEN, oldEmbolden, embolden));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Bar> getBars() {
		if (bars == null) {
			bars = new EObjectContainmentEList<Bar>(Bar.class, this, FrisketPackageImpl.WORDING__BARS);
		}
		return bars;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isTieMarks() {
		return tieMarks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTieMarks(boolean newTieMarks) {
		boolean oldTieMarks = tieMarks;
		tieMarks = newTieMarks;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__TIE_MARKS, oldTieMarks, tieMarks));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTieWidth() {
		return tieWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTieWidth(double newTieWidth) {
		double oldTieWidth = tieWidth;
		tieWidth = newTieWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__TIE_WIDTH, oldTieWidth, tieWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getStencil() {
		return stencil;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStencil(double newStencil) {
		double oldStencil = stencil;
		stencil = newStencil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__STENCIL, oldStencil, stencil));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PenStyle getPenStyle() {
		return penStyle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPenStyle(PenStyle newPenStyle) {
		PenStyle oldPenStyle = penStyle;
		penStyle = newPenStyle == null ? PEN_STYLE_EDEFAULT : newPenStyle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__PEN_STYLE, oldPenStyle, penStyle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHatchSpacing() {
		return hatchSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHatchSpacing(double newHatchSpacing) {
		double oldHatchSpacing = hatchSpacing;
		hatchSpacing = newHatchSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__HATCH_SPACING, oldHatchSpacing, hatchSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHatchAngle() {
		return hatchAngle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHatchAngle(double newHatchAngle) {
		double oldHatchAngle = hatchAngle;
		hatchAngle = newHatchAngle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__HATCH_ANGLE, oldHatchAngle, hatchAngle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHatchInset() {
		return hatchInset;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHatchInset(double newHatchInset) {
		double oldHatchInset = hatchInset;
		hatchInset = newHatchInset;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WORDING__HATCH_INSET, oldHatchInset, hatchInset));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Bridge> getBridges() {
		if (bridges == null) {
			bridges = new EObjectContainmentEList<Bridge>(Bridge.class, this, FrisketPackageImpl.WORDING__BRIDGES);
		}
		return bridges;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<IslandBridges> getIslands() {
		if (islands == null) {
			islands = new EObjectContainmentEList<IslandBridges>(IslandBridges.class, this, FrisketPackageImpl.WORDING__ISLANDS);
		}
		return islands;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__FONT:
				return basicSetFont(null, msgs);
			case FrisketPackageImpl.WORDING__SPANS:
				return ((InternalEList<?>)getSpans()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.WORDING__NUDGES:
				return ((InternalEList<?>)getNudges()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.WORDING__BARS:
				return ((InternalEList<?>)getBars()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.WORDING__BRIDGES:
				return ((InternalEList<?>)getBridges()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.WORDING__ISLANDS:
				return ((InternalEList<?>)getIslands()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__TEXT:
				return getText();
			case FrisketPackageImpl.WORDING__FONT:
				return getFont();
			case FrisketPackageImpl.WORDING__HEIGHT:
				return getHeight();
			case FrisketPackageImpl.WORDING__LINE_SPACING:
				return getLineSpacing();
			case FrisketPackageImpl.WORDING__TRACKING:
				return getTracking();
			case FrisketPackageImpl.WORDING__ALIGNMENT:
				return getAlignment();
			case FrisketPackageImpl.WORDING__KERNING:
				return isKerning();
			case FrisketPackageImpl.WORDING__LIGATURES:
				return isLigatures();
			case FrisketPackageImpl.WORDING__JOINED:
				return isJoined();
			case FrisketPackageImpl.WORDING__TOUCH:
				return getTouch();
			case FrisketPackageImpl.WORDING__FEATURES:
				return getFeatures();
			case FrisketPackageImpl.WORDING__AXES:
				return getAxes();
			case FrisketPackageImpl.WORDING__WORD_SPACING:
				return getWordSpacing();
			case FrisketPackageImpl.WORDING__MEASURE:
				return getMeasure();
			case FrisketPackageImpl.WORDING__SPANS:
				return getSpans();
			case FrisketPackageImpl.WORDING__NUDGES:
				return getNudges();
			case FrisketPackageImpl.WORDING__FLOW:
				return getFlow();
			case FrisketPackageImpl.WORDING__ARC_RADIUS:
				return getArcRadius();
			case FrisketPackageImpl.WORDING__ARC_ANGLE:
				return getArcAngle();
			case FrisketPackageImpl.WORDING__ARC_INSIDE:
				return isArcInside();
			case FrisketPackageImpl.WORDING__ARC_INWARD:
				return isArcInward();
			case FrisketPackageImpl.WORDING__PATH:
				return getPath();
			case FrisketPackageImpl.WORDING__PATH_START:
				return getPathStart();
			case FrisketPackageImpl.WORDING__PATH_REVERSED:
				return isPathReversed();
			case FrisketPackageImpl.WORDING__PATH_HANGING:
				return isPathHanging();
			case FrisketPackageImpl.WORDING__BOX_WIDTH:
				return getBoxWidth();
			case FrisketPackageImpl.WORDING__BOX_HEIGHT:
				return getBoxHeight();
			case FrisketPackageImpl.WORDING__EMBOLDEN:
				return getEmbolden();
			case FrisketPackageImpl.WORDING__BARS:
				return getBars();
			case FrisketPackageImpl.WORDING__TIE_MARKS:
				return isTieMarks();
			case FrisketPackageImpl.WORDING__TIE_WIDTH:
				return getTieWidth();
			case FrisketPackageImpl.WORDING__STENCIL:
				return getStencil();
			case FrisketPackageImpl.WORDING__PEN_STYLE:
				return getPenStyle();
			case FrisketPackageImpl.WORDING__HATCH_SPACING:
				return getHatchSpacing();
			case FrisketPackageImpl.WORDING__HATCH_ANGLE:
				return getHatchAngle();
			case FrisketPackageImpl.WORDING__HATCH_INSET:
				return getHatchInset();
			case FrisketPackageImpl.WORDING__BRIDGES:
				return getBridges();
			case FrisketPackageImpl.WORDING__ISLANDS:
				return getIslands();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__TEXT:
				setText((String)newValue);
				return;
			case FrisketPackageImpl.WORDING__FONT:
				setFont((FontRef)newValue);
				return;
			case FrisketPackageImpl.WORDING__HEIGHT:
				setHeight((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__LINE_SPACING:
				setLineSpacing((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__TRACKING:
				setTracking((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__ALIGNMENT:
				setAlignment((Alignment)newValue);
				return;
			case FrisketPackageImpl.WORDING__KERNING:
				setKerning((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__LIGATURES:
				setLigatures((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__JOINED:
				setJoined((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__TOUCH:
				setTouch((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__FEATURES:
				setFeatures((String)newValue);
				return;
			case FrisketPackageImpl.WORDING__AXES:
				setAxes((String)newValue);
				return;
			case FrisketPackageImpl.WORDING__WORD_SPACING:
				setWordSpacing((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__MEASURE:
				setMeasure((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__SPANS:
				getSpans().clear();
				getSpans().addAll((Collection<? extends TextSpan>)newValue);
				return;
			case FrisketPackageImpl.WORDING__NUDGES:
				getNudges().clear();
				getNudges().addAll((Collection<? extends Nudge>)newValue);
				return;
			case FrisketPackageImpl.WORDING__FLOW:
				setFlow((Flow)newValue);
				return;
			case FrisketPackageImpl.WORDING__ARC_RADIUS:
				setArcRadius((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__ARC_ANGLE:
				setArcAngle((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__ARC_INSIDE:
				setArcInside((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__ARC_INWARD:
				setArcInward((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__PATH:
				setPath((Outline)newValue);
				return;
			case FrisketPackageImpl.WORDING__PATH_START:
				setPathStart((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__PATH_REVERSED:
				setPathReversed((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__PATH_HANGING:
				setPathHanging((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__BOX_WIDTH:
				setBoxWidth((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__BOX_HEIGHT:
				setBoxHeight((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__EMBOLDEN:
				setEmbolden((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__BARS:
				getBars().clear();
				getBars().addAll((Collection<? extends Bar>)newValue);
				return;
			case FrisketPackageImpl.WORDING__TIE_MARKS:
				setTieMarks((Boolean)newValue);
				return;
			case FrisketPackageImpl.WORDING__TIE_WIDTH:
				setTieWidth((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__STENCIL:
				setStencil((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__PEN_STYLE:
				setPenStyle((PenStyle)newValue);
				return;
			case FrisketPackageImpl.WORDING__HATCH_SPACING:
				setHatchSpacing((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__HATCH_ANGLE:
				setHatchAngle((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__HATCH_INSET:
				setHatchInset((Double)newValue);
				return;
			case FrisketPackageImpl.WORDING__BRIDGES:
				getBridges().clear();
				getBridges().addAll((Collection<? extends Bridge>)newValue);
				return;
			case FrisketPackageImpl.WORDING__ISLANDS:
				getIslands().clear();
				getIslands().addAll((Collection<? extends IslandBridges>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__TEXT:
				setText(TEXT_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__FONT:
				setFont((FontRef)null);
				return;
			case FrisketPackageImpl.WORDING__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__LINE_SPACING:
				setLineSpacing(LINE_SPACING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__TRACKING:
				setTracking(TRACKING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__ALIGNMENT:
				setAlignment(ALIGNMENT_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__KERNING:
				setKerning(KERNING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__LIGATURES:
				setLigatures(LIGATURES_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__JOINED:
				setJoined(JOINED_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__TOUCH:
				setTouch(TOUCH_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__FEATURES:
				setFeatures(FEATURES_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__AXES:
				setAxes(AXES_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__WORD_SPACING:
				setWordSpacing(WORD_SPACING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__MEASURE:
				setMeasure(MEASURE_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__SPANS:
				getSpans().clear();
				return;
			case FrisketPackageImpl.WORDING__NUDGES:
				getNudges().clear();
				return;
			case FrisketPackageImpl.WORDING__FLOW:
				setFlow(FLOW_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__ARC_RADIUS:
				setArcRadius(ARC_RADIUS_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__ARC_ANGLE:
				setArcAngle(ARC_ANGLE_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__ARC_INSIDE:
				setArcInside(ARC_INSIDE_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__ARC_INWARD:
				setArcInward(ARC_INWARD_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__PATH:
				setPath((Outline)null);
				return;
			case FrisketPackageImpl.WORDING__PATH_START:
				setPathStart(PATH_START_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__PATH_REVERSED:
				setPathReversed(PATH_REVERSED_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__PATH_HANGING:
				setPathHanging(PATH_HANGING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__BOX_WIDTH:
				setBoxWidth(BOX_WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__BOX_HEIGHT:
				setBoxHeight(BOX_HEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__EMBOLDEN:
				setEmbolden(EMBOLDEN_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__BARS:
				getBars().clear();
				return;
			case FrisketPackageImpl.WORDING__TIE_MARKS:
				setTieMarks(TIE_MARKS_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__TIE_WIDTH:
				setTieWidth(TIE_WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__STENCIL:
				setStencil(STENCIL_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__PEN_STYLE:
				setPenStyle(PEN_STYLE_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__HATCH_SPACING:
				setHatchSpacing(HATCH_SPACING_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__HATCH_ANGLE:
				setHatchAngle(HATCH_ANGLE_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__HATCH_INSET:
				setHatchInset(HATCH_INSET_EDEFAULT);
				return;
			case FrisketPackageImpl.WORDING__BRIDGES:
				getBridges().clear();
				return;
			case FrisketPackageImpl.WORDING__ISLANDS:
				getIslands().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__TEXT:
				return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
			case FrisketPackageImpl.WORDING__FONT:
				return font != null;
			case FrisketPackageImpl.WORDING__HEIGHT:
				return height != HEIGHT_EDEFAULT;
			case FrisketPackageImpl.WORDING__LINE_SPACING:
				return lineSpacing != LINE_SPACING_EDEFAULT;
			case FrisketPackageImpl.WORDING__TRACKING:
				return tracking != TRACKING_EDEFAULT;
			case FrisketPackageImpl.WORDING__ALIGNMENT:
				return alignment != ALIGNMENT_EDEFAULT;
			case FrisketPackageImpl.WORDING__KERNING:
				return kerning != KERNING_EDEFAULT;
			case FrisketPackageImpl.WORDING__LIGATURES:
				return ligatures != LIGATURES_EDEFAULT;
			case FrisketPackageImpl.WORDING__JOINED:
				return joined != JOINED_EDEFAULT;
			case FrisketPackageImpl.WORDING__TOUCH:
				return touch != TOUCH_EDEFAULT;
			case FrisketPackageImpl.WORDING__FEATURES:
				return FEATURES_EDEFAULT == null ? features != null : !FEATURES_EDEFAULT.equals(features);
			case FrisketPackageImpl.WORDING__AXES:
				return AXES_EDEFAULT == null ? axes != null : !AXES_EDEFAULT.equals(axes);
			case FrisketPackageImpl.WORDING__WORD_SPACING:
				return wordSpacing != WORD_SPACING_EDEFAULT;
			case FrisketPackageImpl.WORDING__MEASURE:
				return measure != MEASURE_EDEFAULT;
			case FrisketPackageImpl.WORDING__SPANS:
				return spans != null && !spans.isEmpty();
			case FrisketPackageImpl.WORDING__NUDGES:
				return nudges != null && !nudges.isEmpty();
			case FrisketPackageImpl.WORDING__FLOW:
				return flow != FLOW_EDEFAULT;
			case FrisketPackageImpl.WORDING__ARC_RADIUS:
				return arcRadius != ARC_RADIUS_EDEFAULT;
			case FrisketPackageImpl.WORDING__ARC_ANGLE:
				return arcAngle != ARC_ANGLE_EDEFAULT;
			case FrisketPackageImpl.WORDING__ARC_INSIDE:
				return arcInside != ARC_INSIDE_EDEFAULT;
			case FrisketPackageImpl.WORDING__ARC_INWARD:
				return arcInward != ARC_INWARD_EDEFAULT;
			case FrisketPackageImpl.WORDING__PATH:
				return path != null;
			case FrisketPackageImpl.WORDING__PATH_START:
				return pathStart != PATH_START_EDEFAULT;
			case FrisketPackageImpl.WORDING__PATH_REVERSED:
				return pathReversed != PATH_REVERSED_EDEFAULT;
			case FrisketPackageImpl.WORDING__PATH_HANGING:
				return pathHanging != PATH_HANGING_EDEFAULT;
			case FrisketPackageImpl.WORDING__BOX_WIDTH:
				return boxWidth != BOX_WIDTH_EDEFAULT;
			case FrisketPackageImpl.WORDING__BOX_HEIGHT:
				return boxHeight != BOX_HEIGHT_EDEFAULT;
			case FrisketPackageImpl.WORDING__EMBOLDEN:
				return embolden != EMBOLDEN_EDEFAULT;
			case FrisketPackageImpl.WORDING__BARS:
				return bars != null && !bars.isEmpty();
			case FrisketPackageImpl.WORDING__TIE_MARKS:
				return tieMarks != TIE_MARKS_EDEFAULT;
			case FrisketPackageImpl.WORDING__TIE_WIDTH:
				return tieWidth != TIE_WIDTH_EDEFAULT;
			case FrisketPackageImpl.WORDING__STENCIL:
				return stencil != STENCIL_EDEFAULT;
			case FrisketPackageImpl.WORDING__PEN_STYLE:
				return penStyle != PEN_STYLE_EDEFAULT;
			case FrisketPackageImpl.WORDING__HATCH_SPACING:
				return hatchSpacing != HATCH_SPACING_EDEFAULT;
			case FrisketPackageImpl.WORDING__HATCH_ANGLE:
				return hatchAngle != HATCH_ANGLE_EDEFAULT;
			case FrisketPackageImpl.WORDING__HATCH_INSET:
				return hatchInset != HATCH_INSET_EDEFAULT;
			case FrisketPackageImpl.WORDING__BRIDGES:
				return bridges != null && !bridges.isEmpty();
			case FrisketPackageImpl.WORDING__ISLANDS:
				return islands != null && !islands.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (text: ");
		result.append(text);
		result.append(", height: ");
		result.append(height);
		result.append(", lineSpacing: ");
		result.append(lineSpacing);
		result.append(", tracking: ");
		result.append(tracking);
		result.append(", alignment: ");
		result.append(alignment);
		result.append(", kerning: ");
		result.append(kerning);
		result.append(", ligatures: ");
		result.append(ligatures);
		result.append(", joined: ");
		result.append(joined);
		result.append(", touch: ");
		result.append(touch);
		result.append(", features: ");
		result.append(features);
		result.append(", axes: ");
		result.append(axes);
		result.append(", wordSpacing: ");
		result.append(wordSpacing);
		result.append(", measure: ");
		result.append(measure);
		result.append(", flow: ");
		result.append(flow);
		result.append(", arcRadius: ");
		result.append(arcRadius);
		result.append(", arcAngle: ");
		result.append(arcAngle);
		result.append(", arcInside: ");
		result.append(arcInside);
		result.append(", arcInward: ");
		result.append(arcInward);
		result.append(", pathStart: ");
		result.append(pathStart);
		result.append(", pathReversed: ");
		result.append(pathReversed);
		result.append(", pathHanging: ");
		result.append(pathHanging);
		result.append(", boxWidth: ");
		result.append(boxWidth);
		result.append(", boxHeight: ");
		result.append(boxHeight);
		result.append(", embolden: ");
		result.append(embolden);
		result.append(", tieMarks: ");
		result.append(tieMarks);
		result.append(", tieWidth: ");
		result.append(tieWidth);
		result.append(", stencil: ");
		result.append(stencil);
		result.append(", penStyle: ");
		result.append(penStyle);
		result.append(", hatchSpacing: ");
		result.append(hatchSpacing);
		result.append(", hatchAngle: ");
		result.append(hatchAngle);
		result.append(", hatchInset: ");
		result.append(hatchInset);
		result.append(')');
		return result.toString();
	}

} //WordingImpl
