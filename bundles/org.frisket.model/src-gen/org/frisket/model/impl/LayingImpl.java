/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.frisket.model.Laying;
import org.frisket.model.Turning;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Laying</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#isRoll <em>Roll</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getGap <em>Gap</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getTurning <em>Turning</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#isApart <em>Apart</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#isByJob <em>By Job</em>}</li>
 *   <li>{@link org.frisket.model.impl.LayingImpl#getSeed <em>Seed</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LayingImpl extends MinimalEObjectImpl.Container implements Laying {
	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected double width = WIDTH_EDEFAULT;

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
	 * The default value of the '{@link #isRoll() <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRoll()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ROLL_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRoll() <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRoll()
	 * @generated
	 * @ordered
	 */
	protected boolean roll = ROLL_EDEFAULT;

	/**
	 * The default value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected static final double GAP_EDEFAULT = 2.0;

	/**
	 * The cached value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected double gap = GAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected double margin = MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getTurning() <em>Turning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurning()
	 * @generated
	 * @ordered
	 */
	protected static final Turning TURNING_EDEFAULT = Turning.HALF;

	/**
	 * The cached value of the '{@link #getTurning() <em>Turning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurning()
	 * @generated
	 * @ordered
	 */
	protected Turning turning = TURNING_EDEFAULT;

	/**
	 * The default value of the '{@link #isApart() <em>Apart</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isApart()
	 * @generated
	 * @ordered
	 */
	protected static final boolean APART_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isApart() <em>Apart</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isApart()
	 * @generated
	 * @ordered
	 */
	protected boolean apart = APART_EDEFAULT;

	/**
	 * The default value of the '{@link #isByJob() <em>By Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByJob()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BY_JOB_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isByJob() <em>By Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByJob()
	 * @generated
	 * @ordered
	 */
	protected boolean byJob = BY_JOB_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected static final int SEED_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected int seed = SEED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LayingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.LAYING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(double newWidth) {
		double oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__WIDTH, oldWidth, width));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRoll() {
		return roll;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoll(boolean newRoll) {
		boolean oldRoll = roll;
		roll = newRoll;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__ROLL, oldRoll, roll));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGap() {
		return gap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGap(double newGap) {
		double oldGap = gap;
		gap = newGap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__GAP, oldGap, gap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMargin() {
		return margin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMargin(double newMargin) {
		double oldMargin = margin;
		margin = newMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__MARGIN, oldMargin, margin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Turning getTurning() {
		return turning;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurning(Turning newTurning) {
		Turning oldTurning = turning;
		turning = newTurning == null ? TURNING_EDEFAULT : newTurning;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__TURNING, oldTurning, turning));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isApart() {
		return apart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApart(boolean newApart) {
		boolean oldApart = apart;
		apart = newApart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__APART, oldApart, apart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isByJob() {
		return byJob;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setByJob(boolean newByJob) {
		boolean oldByJob = byJob;
		byJob = newByJob;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__BY_JOB, oldByJob, byJob));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSeed() {
		return seed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeed(int newSeed) {
		int oldSeed = seed;
		seed = newSeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.LAYING__SEED, oldSeed, seed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.LAYING__WIDTH:
				return getWidth();
			case FrisketPackageImpl.LAYING__HEIGHT:
				return getHeight();
			case FrisketPackageImpl.LAYING__ROLL:
				return isRoll();
			case FrisketPackageImpl.LAYING__GAP:
				return getGap();
			case FrisketPackageImpl.LAYING__MARGIN:
				return getMargin();
			case FrisketPackageImpl.LAYING__TURNING:
				return getTurning();
			case FrisketPackageImpl.LAYING__APART:
				return isApart();
			case FrisketPackageImpl.LAYING__BY_JOB:
				return isByJob();
			case FrisketPackageImpl.LAYING__SEED:
				return getSeed();
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
			case FrisketPackageImpl.LAYING__WIDTH:
				setWidth((Double)newValue);
				return;
			case FrisketPackageImpl.LAYING__HEIGHT:
				setHeight((Double)newValue);
				return;
			case FrisketPackageImpl.LAYING__ROLL:
				setRoll((Boolean)newValue);
				return;
			case FrisketPackageImpl.LAYING__GAP:
				setGap((Double)newValue);
				return;
			case FrisketPackageImpl.LAYING__MARGIN:
				setMargin((Double)newValue);
				return;
			case FrisketPackageImpl.LAYING__TURNING:
				setTurning((Turning)newValue);
				return;
			case FrisketPackageImpl.LAYING__APART:
				setApart((Boolean)newValue);
				return;
			case FrisketPackageImpl.LAYING__BY_JOB:
				setByJob((Boolean)newValue);
				return;
			case FrisketPackageImpl.LAYING__SEED:
				setSeed((Integer)newValue);
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
			case FrisketPackageImpl.LAYING__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__ROLL:
				setRoll(ROLL_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__GAP:
				setGap(GAP_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__MARGIN:
				setMargin(MARGIN_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__TURNING:
				setTurning(TURNING_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__APART:
				setApart(APART_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__BY_JOB:
				setByJob(BY_JOB_EDEFAULT);
				return;
			case FrisketPackageImpl.LAYING__SEED:
				setSeed(SEED_EDEFAULT);
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
			case FrisketPackageImpl.LAYING__WIDTH:
				return width != WIDTH_EDEFAULT;
			case FrisketPackageImpl.LAYING__HEIGHT:
				return height != HEIGHT_EDEFAULT;
			case FrisketPackageImpl.LAYING__ROLL:
				return roll != ROLL_EDEFAULT;
			case FrisketPackageImpl.LAYING__GAP:
				return gap != GAP_EDEFAULT;
			case FrisketPackageImpl.LAYING__MARGIN:
				return margin != MARGIN_EDEFAULT;
			case FrisketPackageImpl.LAYING__TURNING:
				return turning != TURNING_EDEFAULT;
			case FrisketPackageImpl.LAYING__APART:
				return apart != APART_EDEFAULT;
			case FrisketPackageImpl.LAYING__BY_JOB:
				return byJob != BY_JOB_EDEFAULT;
			case FrisketPackageImpl.LAYING__SEED:
				return seed != SEED_EDEFAULT;
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
		result.append(" (width: ");
		result.append(width);
		result.append(", height: ");
		result.append(height);
		result.append(", roll: ");
		result.append(roll);
		result.append(", gap: ");
		result.append(gap);
		result.append(", margin: ");
		result.append(margin);
		result.append(", turning: ");
		result.append(turning);
		result.append(", apart: ");
		result.append(apart);
		result.append(", byJob: ");
		result.append(byJob);
		result.append(", seed: ");
		result.append(seed);
		result.append(')');
		return result.toString();
	}

} //LayingImpl
