//! One step of Dormand and Prince's explicit Runge–Kutta method of order 8
//! with error estimates of orders 5 and 3.
//!
//! Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential
//! Equations I, 2nd ed., Springer 1993, II.5 and II.10, and the authors'
//! public code DOP853. Autonomous systems only: the motion does not depend on
//! time itself.

use super::body::{Rates, SIZE, State};

/// A step tried.
pub(super) struct Step {
    /// Its length in seconds.
    pub(super) length_s: f64,
    /// The state at its end.
    pub(super) state: State,
    /// The rates there.
    pub(super) rates: Rates,
    /// Estimate of the local error of each component by the formula of order 5.
    pub(super) error5: State,
    /// The same by the formula of order 3.
    pub(super) error3: State,
    /// The least normal force met at the stages.
    pub(super) least_normal_n: f64,
    /// The margin of friction (see [`Rates::margin_n`]) at the stages of [`STAGES`].
    pub(super) margins_n: [f64; 12],
}

/// Where in the step the stages after the first lie.
pub(super) const STAGES: [f64; 12] = [
    0.052_600_151_958_767_73,
    0.078_900_227_938_151_6,
    0.118_350_341_907_227_4,
    0.281_649_658_092_772_6,
    1.0 / 3.0,
    0.25,
    4.0 / 13.0,
    127.0 / 195.0,
    0.6,
    6.0 / 7.0,
    1.0,
    1.0,
];

/// `y + h·Σ cᵢ·kᵢ`.
#[inline(always)]
fn along<const N: usize>(y: &State, h: f64, terms: [(f64, &State); N]) -> State {
    let mut out = *y;
    for (i, out) in out.iter_mut().enumerate() {
        let mut sum = 0.0;
        for (c, k) in terms {
            sum += c * k[i];
        }
        *out += h * sum;
    }
    out
}

/// The stages in the order of time; of the two at its end the last, which is
/// the step's result.
pub(super) const IN_TIME: [usize; 11] = [0, 1, 2, 5, 3, 6, 4, 8, 7, 9, 11];

/// A step of length `h` from `y`, whose rates `first` are known.
#[inline(always)]
pub(super) fn step(y: &State, first: &State, h: f64, rates: impl Fn(&State) -> Rates) -> Step {
    let mut least_normal_n = f64::INFINITY;
    let mut margins_n = [f64::INFINITY; 12];
    let mut stage = 0;
    let mut at = |y: &State| {
        let found = rates(y);
        // Not a number, once met, must stay.
        if found.normal_n < least_normal_n || found.normal_n.is_nan() {
            least_normal_n = found.normal_n;
        }
        margins_n[stage] = found.margin_n;
        stage += 1;
        found
    };
    let k1 = first;

    let k2 = at(&along(y, h, [(0.052_600_151_958_767_73, k1)]));
    let k3 = at(&along(y, h, [(0.019_725_056_984_537_9, k1), (0.059_175_170_953_613_7, &k2.d)]));
    let k4 = at(&along(y, h, [(0.029_587_585_476_806_85, k1), (0.088_762_756_430_420_54, &k3.d)]));
    let k5 = at(&along(
        y,
        h,
        [(0.241_365_134_159_266_7, k1), (-0.884_549_479_328_286_1, &k3.d), (0.924_834_003_261_792, &k4.d)],
    ));
    let k6 = at(&along(
        y,
        h,
        [(0.037_037_037_037_037_035, k1), (0.170_828_608_729_473_86, &k4.d), (0.125_467_687_566_822_42, &k5.d)],
    ));
    let k7 = at(&along(
        y,
        h,
        [
            (0.037_109_375, k1),
            (0.170_252_211_019_544_05, &k4.d),
            (0.060_216_538_980_455_96, &k5.d),
            (-0.017_578_125, &k6.d),
        ],
    ));
    let k8 = at(&along(
        y,
        h,
        [
            (0.037_092_000_118_504_79, k1),
            (0.170_383_925_712_239_98, &k4.d),
            (0.107_262_030_446_373_28, &k5.d),
            (-0.015_319_437_748_624_402, &k6.d),
            (0.008_273_789_163_814_023, &k7.d),
        ],
    ));
    let k9 = at(&along(
        y,
        h,
        [
            (0.624_110_958_716_075_7, k1),
            (-3.360_892_629_446_941_4, &k4.d),
            (-0.868_219_346_841_726, &k5.d),
            (27.592_099_699_446_71, &k6.d),
            (20.154_067_550_477_894, &k7.d),
            (-43.489_884_181_069_96, &k8.d),
        ],
    ));
    let k10 = at(&along(
        y,
        h,
        [
            (0.477_662_536_438_264_34, k1),
            (-2.488_114_619_971_667_7, &k4.d),
            (-0.590_290_826_836_843, &k5.d),
            (21.230_051_448_181_193, &k6.d),
            (15.279_233_632_882_423, &k7.d),
            (-33.288_210_968_984_86, &k8.d),
            (-0.020_331_201_708_508_627, &k9.d),
        ],
    ));
    let k11 = at(&along(
        y,
        h,
        [
            (-0.937_142_430_085_987_3, k1),
            (5.186_372_428_844_064, &k4.d),
            (1.091_437_348_996_729_5, &k5.d),
            (-8.149_787_010_746_927, &k6.d),
            (-18.520_065_659_996_96, &k7.d),
            (22.739_487_099_350_505, &k8.d),
            (2.493_605_552_679_652_3, &k9.d),
            (-3.046_764_471_898_219_6, &k10.d),
        ],
    ));
    let k12 = at(&along(
        y,
        h,
        [
            (2.273_310_147_516_538, k1),
            (-10.534_495_466_737_25, &k4.d),
            (-2.000_872_058_224_862_5, &k5.d),
            (-17.958_931_863_118_8, &k6.d),
            (27.948_884_529_419_96, &k7.d),
            (-2.858_998_277_135_023_5, &k8.d),
            (-8.872_856_933_530_63, &k9.d),
            (12.360_567_175_794_303, &k10.d),
            (0.643_392_746_015_763_6, &k11.d),
        ],
    ));
    let state = along(
        y,
        h,
        [
            (0.054_293_734_116_568_765, k1),
            (4.450_312_892_752_409, &k6.d),
            (1.891_517_899_314_500_3, &k7.d),
            (-5.801_203_960_010_585, &k8.d),
            (0.311_164_366_957_819_9, &k9.d),
            (-0.152_160_949_662_516_1, &k10.d),
            (0.201_365_400_804_030_34, &k11.d),
            (0.044_710_615_727_772_59, &k12.d),
        ],
    );
    let rates = at(&state);
    let zero = [0.0; SIZE];
    let error5 = along(
        &zero,
        h,
        [
            (0.013_120_044_994_194_88, k1),
            (-1.225_156_446_376_204_4, &k6.d),
            (-0.495_758_949_657_250_2, &k7.d),
            (1.664_377_182_454_986_4, &k8.d),
            (-0.350_328_848_749_973_66, &k9.d),
            (0.334_179_118_713_017_5, &k10.d),
            (0.081_923_206_485_115_71, &k11.d),
            (-0.022_355_307_863_886_294, &k12.d),
        ],
    );
    let error3 = along(
        &zero,
        h,
        [
            (-0.189_800_754_072_407_62, k1),
            (4.450_312_892_752_409, &k6.d),
            (1.891_517_899_314_500_3, &k7.d),
            (-5.801_203_960_010_585, &k8.d),
            (-0.422_682_321_323_791_9, &k9.d),
            (-0.152_160_949_662_516_1, &k10.d),
            (0.201_365_400_804_030_34, &k11.d),
            (0.022_651_792_198_360_82, &k12.d),
        ],
    );
    Step { length_s: h, state, rates, error5, error3, least_normal_n, margins_n }
}
