/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.frisket.model.Alignment;
import org.frisket.model.FontRef;
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
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.WORDING__FONT:
				return basicSetFont(null, msgs);
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
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
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
		result.append(')');
		return result.toString();
	}

} //WordingImpl
