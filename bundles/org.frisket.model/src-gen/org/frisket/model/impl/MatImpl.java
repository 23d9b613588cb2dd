/**
 */
package org.frisket.model.impl;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectEList;

import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mat</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.MatImpl#getBehind <em>Behind</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getCorners <em>Corners</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getMitreLimit <em>Mitre Limit</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getHoles <em>Holes</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getSmoothing <em>Smoothing</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getForm <em>Form</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getReach <em>Reach</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getShadowX <em>Shadow X</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getShadowY <em>Shadow Y</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getFrameKind <em>Frame Kind</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getFrameMargin <em>Frame Margin</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getFrameWidth <em>Frame Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getCornerRadius <em>Corner Radius</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getSmallestHole <em>Smallest Hole</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MatImpl extends ElementImpl implements Mat {
	/**
	 * The cached value of the '{@link #getBehind() <em>Behind</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBehind()
	 * @generated
	 * @ordered
	 */
	protected EList<Element> behind;

	/**
	 * The default value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected static final double DISTANCE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected double distance = DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCorners() <em>Corners</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCorners()
	 * @generated
	 * @ordered
	 */
	protected static final CornerJoin CORNERS_EDEFAULT = CornerJoin.ROUND;

	/**
	 * The cached value of the '{@link #getCorners() <em>Corners</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCorners()
	 * @generated
	 * @ordered
	 */
	protected CornerJoin corners = CORNERS_EDEFAULT;

	/**
	 * The default value of the '{@link #getMitreLimit() <em>Mitre Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMitreLimit()
	 * @generated
	 * @ordered
	 */
	protected static final double MITRE_LIMIT_EDEFAULT = 4.0;

	/**
	 * The cached value of the '{@link #getMitreLimit() <em>Mitre Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMitreLimit()
	 * @generated
	 * @ordered
	 */
	protected double mitreLimit = MITRE_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected static final HoleRule HOLES_EDEFAULT = HoleRule.KEEP;

	/**
	 * The cached value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected HoleRule holes = HOLES_EDEFAULT;

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
	 * The default value of the '{@link #getForm() <em>Form</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getForm()
	 * @generated
	 * @ordered
	 */
	protected static final MatForm FORM_EDEFAULT = MatForm.FOLLOW;

	/**
	 * The cached value of the '{@link #getForm() <em>Form</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getForm()
	 * @generated
	 * @ordered
	 */
	protected MatForm form = FORM_EDEFAULT;

	/**
	 * The default value of the '{@link #getReach() <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReach()
	 * @generated
	 * @ordered
	 */
	protected static final double REACH_EDEFAULT = 10.0;

	/**
	 * The cached value of the '{@link #getReach() <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReach()
	 * @generated
	 * @ordered
	 */
	protected double reach = REACH_EDEFAULT;

	/**
	 * The default value of the '{@link #getShadowX() <em>Shadow X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadowX()
	 * @generated
	 * @ordered
	 */
	protected static final double SHADOW_X_EDEFAULT = 3.0;

	/**
	 * The cached value of the '{@link #getShadowX() <em>Shadow X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadowX()
	 * @generated
	 * @ordered
	 */
	protected double shadowX = SHADOW_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getShadowY() <em>Shadow Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadowY()
	 * @generated
	 * @ordered
	 */
	protected static final double SHADOW_Y_EDEFAULT = 3.0;

	/**
	 * The cached value of the '{@link #getShadowY() <em>Shadow Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShadowY()
	 * @generated
	 * @ordered
	 */
	protected double shadowY = SHADOW_Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrameKind() <em>Frame Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameKind()
	 * @generated
	 * @ordered
	 */
	protected static final FrameKind FRAME_KIND_EDEFAULT = FrameKind.RECTANGLE;

	/**
	 * The cached value of the '{@link #getFrameKind() <em>Frame Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameKind()
	 * @generated
	 * @ordered
	 */
	protected FrameKind frameKind = FRAME_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrameMargin() <em>Frame Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameMargin()
	 * @generated
	 * @ordered
	 */
	protected static final double FRAME_MARGIN_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getFrameMargin() <em>Frame Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameMargin()
	 * @generated
	 * @ordered
	 */
	protected double frameMargin = FRAME_MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrameWidth() <em>Frame Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double FRAME_WIDTH_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getFrameWidth() <em>Frame Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidth()
	 * @generated
	 * @ordered
	 */
	protected double frameWidth = FRAME_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getCornerRadius() <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCornerRadius()
	 * @generated
	 * @ordered
	 */
	protected static final double CORNER_RADIUS_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getCornerRadius() <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCornerRadius()
	 * @generated
	 * @ordered
	 */
	protected double cornerRadius = CORNER_RADIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getSmallestHole() <em>Smallest Hole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmallestHole()
	 * @generated
	 * @ordered
	 */
	protected static final double SMALLEST_HOLE_EDEFAULT = 3.0;

	/**
	 * The cached value of the '{@link #getSmallestHole() <em>Smallest Hole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmallestHole()
	 * @generated
	 * @ordered
	 */
	protected double smallestHole = SMALLEST_HOLE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MatImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.MAT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Element> getBehind() {
		if (behind == null) {
			behind = new EObjectEList<Element>(Element.class, this, FrisketPackageImpl.MAT__BEHIND);
		}
		return behind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDistance() {
		return distance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistance(double newDistance) {
		double oldDistance = distance;
		distance = newDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__DISTANCE, oldDistance, distance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CornerJoin getCorners() {
		return corners;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCorners(CornerJoin newCorners) {
		CornerJoin oldCorners = corners;
		corners = newCorners == null ? CORNERS_EDEFAULT : newCorners;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__CORNERS, oldCorners, corners));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMitreLimit() {
		return mitreLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMitreLimit(double newMitreLimit) {
		double oldMitreLimit = mitreLimit;
		mitreLimit = newMitreLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__MITRE_LIMIT, oldMitreLimit, mitreLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HoleRule getHoles() {
		return holes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoles(HoleRule newHoles) {
		HoleRule oldHoles = holes;
		holes = newHoles == null ? HOLES_EDEFAULT : newHoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__HOLES, oldHoles, holes));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__SMOOTHING, oldSmoothing, smoothing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MatForm getForm() {
		return form;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setForm(MatForm newForm) {
		MatForm oldForm = form;
		form = newForm == null ? FORM_EDEFAULT : newForm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__FORM, oldForm, form));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getReach() {
		return reach;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReach(double newReach) {
		double oldReach = reach;
		reach = newReach;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__REACH, oldReach, reach));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getShadowX() {
		return shadowX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShadowX(double newShadowX) {
		double oldShadowX = shadowX;
		shadowX = newShadowX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__SHADOW_X, oldShadowX, shadowX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getShadowY() {
		return shadowY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShadowY(double newShadowY) {
		double oldShadowY = shadowY;
		shadowY = newShadowY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__SHADOW_Y, oldShadowY, shadowY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FrameKind getFrameKind() {
		return frameKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameKind(FrameKind newFrameKind) {
		FrameKind oldFrameKind = frameKind;
		frameKind = newFrameKind == null ? FRAME_KIND_EDEFAULT : newFrameKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__FRAME_KIND, oldFrameKind, frameKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getFrameMargin() {
		return frameMargin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameMargin(double newFrameMargin) {
		double oldFrameMargin = frameMargin;
		frameMargin = newFrameMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__FRAME_MARGIN, oldFrameMargin, frameMargin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getFrameWidth() {
		return frameWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameWidth(double newFrameWidth) {
		double oldFrameWidth = frameWidth;
		frameWidth = newFrameWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__FRAME_WIDTH, oldFrameWidth, frameWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getCornerRadius() {
		return cornerRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCornerRadius(double newCornerRadius) {
		double oldCornerRadius = cornerRadius;
		cornerRadius = newCornerRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__CORNER_RADIUS, oldCornerRadius, cornerRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSmallestHole() {
		return smallestHole;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSmallestHole(double newSmallestHole) {
		double oldSmallestHole = smallestHole;
		smallestHole = newSmallestHole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__SMALLEST_HOLE, oldSmallestHole, smallestHole));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.MAT__BEHIND:
				return getBehind();
			case FrisketPackageImpl.MAT__DISTANCE:
				return getDistance();
			case FrisketPackageImpl.MAT__CORNERS:
				return getCorners();
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				return getMitreLimit();
			case FrisketPackageImpl.MAT__HOLES:
				return getHoles();
			case FrisketPackageImpl.MAT__SMOOTHING:
				return getSmoothing();
			case FrisketPackageImpl.MAT__FORM:
				return getForm();
			case FrisketPackageImpl.MAT__REACH:
				return getReach();
			case FrisketPackageImpl.MAT__SHADOW_X:
				return getShadowX();
			case FrisketPackageImpl.MAT__SHADOW_Y:
				return getShadowY();
			case FrisketPackageImpl.MAT__FRAME_KIND:
				return getFrameKind();
			case FrisketPackageImpl.MAT__FRAME_MARGIN:
				return getFrameMargin();
			case FrisketPackageImpl.MAT__FRAME_WIDTH:
				return getFrameWidth();
			case FrisketPackageImpl.MAT__CORNER_RADIUS:
				return getCornerRadius();
			case FrisketPackageImpl.MAT__SMALLEST_HOLE:
				return getSmallestHole();
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
			case FrisketPackageImpl.MAT__BEHIND:
				getBehind().clear();
				getBehind().addAll((Collection<? extends Element>)newValue);
				return;
			case FrisketPackageImpl.MAT__DISTANCE:
				setDistance((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__CORNERS:
				setCorners((CornerJoin)newValue);
				return;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				setMitreLimit((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__HOLES:
				setHoles((HoleRule)newValue);
				return;
			case FrisketPackageImpl.MAT__SMOOTHING:
				setSmoothing((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__FORM:
				setForm((MatForm)newValue);
				return;
			case FrisketPackageImpl.MAT__REACH:
				setReach((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__SHADOW_X:
				setShadowX((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__SHADOW_Y:
				setShadowY((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__FRAME_KIND:
				setFrameKind((FrameKind)newValue);
				return;
			case FrisketPackageImpl.MAT__FRAME_MARGIN:
				setFrameMargin((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__FRAME_WIDTH:
				setFrameWidth((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__CORNER_RADIUS:
				setCornerRadius((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__SMALLEST_HOLE:
				setSmallestHole((Double)newValue);
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
			case FrisketPackageImpl.MAT__BEHIND:
				getBehind().clear();
				return;
			case FrisketPackageImpl.MAT__DISTANCE:
				setDistance(DISTANCE_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__CORNERS:
				setCorners(CORNERS_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				setMitreLimit(MITRE_LIMIT_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__HOLES:
				setHoles(HOLES_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__SMOOTHING:
				setSmoothing(SMOOTHING_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__FORM:
				setForm(FORM_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__REACH:
				setReach(REACH_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__SHADOW_X:
				setShadowX(SHADOW_X_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__SHADOW_Y:
				setShadowY(SHADOW_Y_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__FRAME_KIND:
				setFrameKind(FRAME_KIND_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__FRAME_MARGIN:
				setFrameMargin(FRAME_MARGIN_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__FRAME_WIDTH:
				setFrameWidth(FRAME_WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__CORNER_RADIUS:
				setCornerRadius(CORNER_RADIUS_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__SMALLEST_HOLE:
				setSmallestHole(SMALLEST_HOLE_EDEFAULT);
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
			case FrisketPackageImpl.MAT__BEHIND:
				return behind != null && !behind.isEmpty();
			case FrisketPackageImpl.MAT__DISTANCE:
				return distance != DISTANCE_EDEFAULT;
			case FrisketPackageImpl.MAT__CORNERS:
				return corners != CORNERS_EDEFAULT;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				return mitreLimit != MITRE_LIMIT_EDEFAULT;
			case FrisketPackageImpl.MAT__HOLES:
				return holes != HOLES_EDEFAULT;
			case FrisketPackageImpl.MAT__SMOOTHING:
				return smoothing != SMOOTHING_EDEFAULT;
			case FrisketPackageImpl.MAT__FORM:
				return form != FORM_EDEFAULT;
			case FrisketPackageImpl.MAT__REACH:
				return reach != REACH_EDEFAULT;
			case FrisketPackageImpl.MAT__SHADOW_X:
				return shadowX != SHADOW_X_EDEFAULT;
			case FrisketPackageImpl.MAT__SHADOW_Y:
				return shadowY != SHADOW_Y_EDEFAULT;
			case FrisketPackageImpl.MAT__FRAME_KIND:
				return frameKind != FRAME_KIND_EDEFAULT;
			case FrisketPackageImpl.MAT__FRAME_MARGIN:
				return frameMargin != FRAME_MARGIN_EDEFAULT;
			case FrisketPackageImpl.MAT__FRAME_WIDTH:
				return frameWidth != FRAME_WIDTH_EDEFAULT;
			case FrisketPackageImpl.MAT__CORNER_RADIUS:
				return cornerRadius != CORNER_RADIUS_EDEFAULT;
			case FrisketPackageImpl.MAT__SMALLEST_HOLE:
				return smallestHole != SMALLEST_HOLE_EDEFAULT;
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
		result.append(" (distance: ");
		result.append(distance);
		result.append(", corners: ");
		result.append(corners);
		result.append(", mitreLimit: ");
		result.append(mitreLimit);
		result.append(", holes: ");
		result.append(holes);
		result.append(", smoothing: ");
		result.append(smoothing);
		result.append(", form: ");
		result.append(form);
		result.append(", reach: ");
		result.append(reach);
		result.append(", shadowX: ");
		result.append(shadowX);
		result.append(", shadowY: ");
		result.append(shadowY);
		result.append(", frameKind: ");
		result.append(frameKind);
		result.append(", frameMargin: ");
		result.append(frameMargin);
		result.append(", frameWidth: ");
		result.append(frameWidth);
		result.append(", cornerRadius: ");
		result.append(cornerRadius);
		result.append(", smallestHole: ");
		result.append(smallestHole);
		result.append(')');
		return result.toString();
	}

} //MatImpl
