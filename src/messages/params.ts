import type { CautionParams } from './rooms/cautions.js';
import type { CheckParams } from './rooms/checks.js';
import type { CoachParams } from './rooms/coach.js';
import type { CompareParams } from './rooms/compare.js';
import type { ConditionParams } from './rooms/condition.js';
import type { EvidenceParams, NextParams } from './rooms/evidence.js';
import type { ExpectParams } from './rooms/expect.js';
import type { ExplanationParams } from './rooms/explanations.js';
import type { KnowledgeParams } from './rooms/knowledge.js';
import type { DoubtParams, LiveParams } from './rooms/live.js';
import type { LogParams } from './rooms/logs.js';
import type { ModeUseParams } from './rooms/mode-use.js';
import type { OtherParams } from './rooms/other.js';
import type { PairParams } from './rooms/pair.js';
import type { QualityParams } from './rooms/quality.js';
import type { RecordParams } from './rooms/record.js';
import type { RecordingParams } from './rooms/recording.js';
import type { ExpectedParams, RefusalParams, RemedyParams } from './rooms/refusals.js';
import type { SetupParams } from './rooms/setup.js';
import type { SignParams } from './rooms/signs.js';
import type { StepParams } from './rooms/steps.js';
import type { SuspicionParams } from './rooms/suspicions.js';
import type { VerdictParams } from './rooms/verdict.js';
import type { WatchParams } from './rooms/watch.js';

/** The params of every sentence, by its code. */
export interface MessageParams
  extends VerdictParams,
    PairParams,
    CautionParams,
    QualityParams,
    RecordingParams,
    LogParams,
    SuspicionParams,
    SignParams,
    OtherParams,
    SetupParams,
    KnowledgeParams,
    ExpectParams,
    CheckParams,
    RecordParams,
    ModeUseParams,
    ExplanationParams,
    EvidenceParams,
    NextParams,
    StepParams,
    LiveParams,
    DoubtParams,
    CompareParams,
    RefusalParams,
    ExpectedParams,
    RemedyParams,
    WatchParams,
    CoachParams,
    ConditionParams {}

export type MessageCode = keyof MessageParams;
export type ParamsOf<C extends MessageCode> = MessageParams[C];
