// The tags that a chapter may use. A figure or an exercise is made available to authors here.
import BenchNote from '../../components/BenchNote.astro';
import Caution from '../../components/Caution.astro';
import Choose from '../../components/Choose.astro';
import Cite from '../../components/Cite.astro';
import Derivation from '../../components/Derivation.astro';
import Door from '../../components/Door.astro';
import Scene from '../../components/Scene.astro';
import WholeString from '../../components/figures/WholeString.astro';
import DragFret from '../../components/figures/DragFret.astro';
import DragGauge from '../../components/figures/DragGauge.astro';
import DragLength from '../../components/figures/DragLength.astro';
import DragRise from '../../components/figures/DragRise.astro';
import FiveGauges from '../../components/figures/FiveGauges.astro';
import Bending from '../../components/figures/Bending.astro';
import DragLowNote from '../../components/figures/DragLowNote.astro';
import DragNote from '../../components/figures/DragNote.astro';
import SlideRule from '../../components/figures/SlideRule.astro';
import StringElement from '../../components/figures/StringElement.astro';
import SaddleCurve from '../../components/figures/SaddleCurve.astro';
import FingersPlace from '../../components/figures/FingersPlace.astro';
import ThreeRulers from '../../components/figures/ThreeRulers.astro';
import RecordedString from '../../components/figures/RecordedString.astro';
import Ladder from '../../components/figures/Ladder.astro';
import HowToMeasure from '../../components/figures/HowToMeasure.astro';
import PressingDown from '../../components/figures/PressingDown.astro';
import TheFlags from '../../components/figures/TheFlags.astro';
import TheBridge from '../../components/figures/TheBridge.astro';
import TheNutSlot from '../../components/figures/TheNutSlot.astro';
import TheBuckets from '../../components/figures/TheBuckets.astro';
import TheCliff from '../../components/figures/TheCliff.astro';
import DragReference from '../../components/figures/DragReference.astro';
import SetAtReference from '../../components/figures/SetAtReference.astro';
import TheCapo from '../../components/figures/TheCapo.astro';
import TheOctave from '../../components/figures/TheOctave.astro';
import TheCaliper from '../../components/figures/TheCaliper.astro';
import TheStairs from '../../components/figures/TheStairs.astro';
import TheSection from '../../components/figures/TheSection.astro';
import TheVice from '../../components/figures/TheVice.astro';
import TheNeck from '../../components/figures/TheNeck.astro';
import TheSquare from '../../components/figures/TheSquare.astro';
import ThreeHandles from '../../components/figures/ThreeHandles.astro';
import Eq from '../../components/Eq.astro';
import Figure from '../../components/Figure.astro';
import FindMistake from '../../components/FindMistake.astro';
import Guess from '../../components/Guess.astro';
import Numeric from '../../components/Numeric.astro';
import PointsTo from '../../components/PointsTo.astro';
import Order from '../../components/Order.astro';
import Q from '../../components/Q.astro';
import SideNote from '../../components/SideNote.astro';
import Rounds from '../../components/figures/Rounds.astro';
import RuleMap from '../../components/figures/RuleMap.astro';
import Step from '../../components/Step.astro';
import Teacher from '../../components/Teacher.astro';
import Term from '../../components/Term.astro';
import DragSaddle from '../../components/figures/DragSaddle.astro';
import DragScale from '../../components/figures/DragScale.astro';
import DragBoard from '../../components/figures/DragBoard.astro';
import FretsMeet from '../../components/figures/FretsMeet.astro';
import DrawTheBoard from '../../components/figures/DrawTheBoard.astro';
import EvenedOut from '../../components/figures/EvenedOut.astro';
import SideBySide from '../../components/figures/SideBySide.astro';
import ThreeRoads from '../../components/figures/ThreeRoads.astro';
import TwoNecks from '../../components/figures/TwoNecks.astro';
import WalkRoads from '../../components/figures/WalkRoads.astro';
import HangFive from '../../components/figures/HangFive.astro';
import SameBend from '../../components/figures/SameBend.astro';
import ByEar from '../../components/figures/ByEar.astro';
import FivePulls from '../../components/figures/FivePulls.astro';
import Unwind from '../../components/figures/Unwind.astro';
import WouldNotice from '../../components/figures/WouldNotice.astro';
import BendByEar from '../../components/figures/BendByEar.astro';
import Bell from '../../components/figures/Bell.astro';
import PlaceDots from '../../components/figures/PlaceDots.astro';
import DrawNut from '../../components/figures/DrawNut.astro';
import TuneUp from '../../components/figures/TuneUp.astro';
import DrawSaddles from '../../components/figures/DrawSaddles.astro';
import Veil from '../../components/Veil.astro';

export const components = {
  BenchNote,
  WalkRoads,
  WholeString,
  Caution,
  Choose,
  Cite,
  Derivation,
  Door,
  DragFret,
  DragGauge,
  DragLength,
  DragLowNote,
  DragNote,
  DragRise,
  Eq,
  Figure,
  FindMistake,
  FingersPlace,
  FiveGauges,
  Guess,
  HowToMeasure,
  SaddleCurve,
  Scene,
  Numeric,
  Order,
  PointsTo,
  Q,
  Rounds,
  RuleMap,
  SideNote,
  SlideRule,
  Step,
  StringElement,
  Bending,
  Teacher,
  Term,
  PressingDown,
  TheBridge,
  TheFlags,
  TheBuckets,
  TheNutSlot,
  TheCliff,
  DragReference,
  SetAtReference,
  TheCapo,
  TheOctave,
  TheCaliper,
  TheStairs,
  RecordedString,
  Ladder,
  TheSection,
  TheVice,
  TheNeck,
  TheSquare,
  ThreeHandles,
  ThreeRulers,
  DragSaddle,
  DragScale,
  DragBoard,
  FretsMeet,
  DrawTheBoard,
  EvenedOut,
  SideBySide,
  ThreeRoads,
  TwoNecks,
  HangFive,
  SameBend,
  ByEar,
  FivePulls,
  Unwind,
  WouldNotice,
  BendByEar,
  Bell,
  PlaceDots,
  DrawNut,
  TuneUp,
  DrawSaddles,
  Veil,
};
