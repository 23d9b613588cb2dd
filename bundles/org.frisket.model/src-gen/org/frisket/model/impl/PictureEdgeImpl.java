/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.frisket.model.BackdropRule;
import org.frisket.model.EdgeHoles;
import org.frisket.model.PictureEdge;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Picture Edge</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getBackdrop <em>Backdrop</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getDifference <em>Difference</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getShadow <em>Shadow</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getSpecks <em>Specks</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getHoles <em>Holes</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getSmoothing <em>Smoothing</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#getBorder <em>Border</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureEdgeImpl#isWhole <em>Whole</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PictureEdgeImpl extends MinimalEObjectImpl.Container implements PictureEdge {
	/**
	 * The default value of the '{@link #getBackdrop() <em>Backdrop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackdrop()
	 * @generated
	 * @ordered
	 */
	protected static final BackdropRule BACKDROP_EDEFAULT = BackdropRule.AUTO;

	/**
	 * The cached value of the '{@link #getBackdrop() <em>Backdrop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackdrop()
	 * @generated
	 * @ordered
	 */
	protected BackdropRule backdrop = BACKDROP_EDEFAULT;

	/**
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected String colour = COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getDifference() <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDifference()
	 * @generated
	 * @ordered
	 */
	protected static final double DIFFERENCE_EDEFAULT = 10.0;

	/**
	 * The cached value of the '{@link #getDifference() <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDifference()
	 * @generated
	 * @ordered
	 */
	protected double difference = DIFFERENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getShadow() <em>Shadow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadow()
	 * @generated
	 * @ordered
	 */
	protected static final double SHADOW_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getShadow() <em>Shadow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadow()
	 * @generated
	 * @ordered
	 */
	protected double shadow = SHADOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecks() <em>Specks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecks()
	 * @generated
	 * @ordered
	 */
	protected static final double SPECKS_EDEFAULT = 0.5;

	/**
	 * The cached value of the '{@link #getSpecks() <em>Specks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecks()
	 * @generated
	 * @ordered
	 */
	protected double specks = SPECKS_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected static final EdgeHoles HOLES_EDEFAULT = EdgeHoles.AS_TOLD;

	/**
	 * The cached value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected EdgeHoles holes = HOLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getSmoothing() <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoothing()
	 * @generated
	 * @ordered
	 */
	protected static final double SMOOTHING_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSmoothing() <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoothing()
	 * @generated
	 * @ordered
	 */
	protected double smoothing = SMOOTHING_EDEFAULT;

	/**
	 * The default value of the '{@link #getBorder() <em>Border</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBorder()
	 * @generated
	 * @ordered
	 */
	protected static final double BORDER_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getBorder() <em>Border</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBorder()
	 * @generated
	 * @ordered
	 */
	protected double border = BORDER_EDEFAULT;

	/**
	 * The default value of the '{@link #isWhole() <em>Whole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isWhole()
	 * @generated
	 * @ordered
	 */
	protected static final boolean WHOLE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isWhole() <em>Whole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isWhole()
	 * @generated
	 * @ordered
	 */
	protected boolean whole = WHOLE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PictureEdgeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.PICTURE_EDGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BackdropRule getBackdrop() {
		return backdrop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBackdrop(BackdropRule newBackdrop) {
		BackdropRule oldBackdrop = backdrop;
		backdrop = newBackdrop == null ? BACKDROP_EDEFAULT : newBackdrop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__BACKDROP, oldBackdrop, backdrop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(String newColour) {
		String oldColour = colour;
		colour = newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__COLOUR, oldColour, colour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDifference() {
		return difference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDifference(double newDifference) {
		double oldDifference = difference;
		difference = newDifference;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__DIFFERENCE, oldDifference, difference));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getShadow() {
		return shadow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShadow(double newShadow) {
		double oldShadow = shadow;
		shadow = newShadow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__SHADOW, oldShadow, shadow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSpecks() {
		return specks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecks(double newSpecks) {
		double oldSpecks = specks;
		specks = newSpecks;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__SPECKS, oldSpecks, specks));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EdgeHoles getHoles() {
		return holes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoles(EdgeHoles newHoles) {
		EdgeHoles oldHoles = holes;
		holes = newHoles == null ? HOLES_EDEFAULT : newHoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__HOLES, oldHoles, holes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSmoothing() {
		return smoothing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSmoothing(double newSmoothing) {
		double oldSmoothing = smoothing;
		smoothing = newSmoothing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__SMOOTHING, oldSmoothing, smoothing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getBorder() {
		return border;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBorder(double newBorder) {
		double oldBorder = border;
		border = newBorder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__BORDER, oldBorder, border));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isWhole() {
		return whole;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhole(boolean newWhole) {
		boolean oldWhole = whole;
		whole = newWhole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE_EDGE__WHOLE, oldWhole, whole));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE_EDGE__BACKDROP:
				return getBackdrop();
			case FrisketPackageImpl.PICTURE_EDGE__COLOUR:
				return getColour();
			case FrisketPackageImpl.PICTURE_EDGE__DIFFERENCE:
				return getDifference();
			case FrisketPackageImpl.PICTURE_EDGE__SHADOW:
				return getShadow();
			case FrisketPackageImpl.PICTURE_EDGE__SPECKS:
				return getSpecks();
			case FrisketPackageImpl.PICTURE_EDGE__HOLES:
				return getHoles();
			case FrisketPackageImpl.PICTURE_EDGE__SMOOTHING:
				return getSmoothing();
			case FrisketPackageImpl.PICTURE_EDGE__BORDER:
				return getBorder();
			case FrisketPackageImpl.PICTURE_EDGE__WHOLE:
				return isWhole();
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
			case FrisketPackageImpl.PICTURE_EDGE__BACKDROP:
				setBackdrop((BackdropRule)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__COLOUR:
				setColour((String)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__DIFFERENCE:
				setDifference((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SHADOW:
				setShadow((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SPECKS:
				setSpecks((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__HOLES:
				setHoles((EdgeHoles)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SMOOTHING:
				setSmoothing((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__BORDER:
				setBorder((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__WHOLE:
				setWhole((Boolean)newValue);
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
			case FrisketPackageImpl.PICTURE_EDGE__BACKDROP:
				setBackdrop(BACKDROP_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__DIFFERENCE:
				setDifference(DIFFERENCE_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SHADOW:
				setShadow(SHADOW_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SPECKS:
				setSpecks(SPECKS_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__HOLES:
				setHoles(HOLES_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__SMOOTHING:
				setSmoothing(SMOOTHING_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__BORDER:
				setBorder(BORDER_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE_EDGE__WHOLE:
				setWhole(WHOLE_EDEFAULT);
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
			case FrisketPackageImpl.PICTURE_EDGE__BACKDROP:
				return backdrop != BACKDROP_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case FrisketPackageImpl.PICTURE_EDGE__DIFFERENCE:
				return difference != DIFFERENCE_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__SHADOW:
				return shadow != SHADOW_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__SPECKS:
				return specks != SPECKS_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__HOLES:
				return holes != HOLES_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__SMOOTHING:
				return smoothing != SMOOTHING_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__BORDER:
				return border != BORDER_EDEFAULT;
			case FrisketPackageImpl.PICTURE_EDGE__WHOLE:
				return whole != WHOLE_EDEFAULT;
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
		result.append(" (backdrop: ");
		result.append(backdrop);
		result.append(", colour: ");
		result.append(colour);
		result.append(", difference: ");
		result.append(difference);
		result.append(", shadow: ");
		result.append(shadow);
		result.append(", specks: ");
		result.append(specks);
		result.append(", holes: ");
		result.append(holes);
		result.append(", smoothing: ");
		result.append(smoothing);
		result.append(", border: ");
		result.append(border);
		result.append(", whole: ");
		result.append(whole);
		result.append(')');
		return result.toString();
	}

} //PictureEdgeImpl
