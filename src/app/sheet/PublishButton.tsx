import { lazy, type ReactNode } from 'react';
import { DialogButton } from './DialogButton.tsx';
import type { RoomProps } from '../publishing/PublishingRoom.tsx';

const PublishingRoom = lazy(() => import('../publishing/PublishingRoom.tsx'));

/** Asks for the room in which the printed pattern is looked through, worded and saved. */
export function PublishButton(props: Omit<RoomProps, 'close'>): ReactNode {
  return (
    <DialogButton words="Publish" className="main-act" alarm={props.acts.alarm}>
      {(close) => <PublishingRoom {...props} close={close} />}
    </DialogButton>
  );
}
