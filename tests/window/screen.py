"""A screen that nobody sees: an X server of its own with a program on it, looked at as a screen reader does and driven
by real keys and a real mouse.

What stands where is asked over the accessibility bus (AT-SPI), by role and name, so that a test says "press the button
On to the spots" and holds no positions; it is waited for, and nothing sleeps for a guessed time. Keys and clicks go
through xdotool, as from a keyboard and a mouse.
"""

import contextlib
import ctypes
import os
import re
import shutil
import struct
import subprocess
import time
import zlib

TOOLS = {"Xvfb": "xvfb", "xdotool": "xdotool", "dbus-daemon": "dbus-daemon"}
BUS_LAUNCHER = "/usr/share/dbus-1/services/org.a11y.Bus.service"
PATIENCE = 90.0  # Seconds: a machine at work, a program under the sanitizers.

_ACCESSIBLE = "org.a11y.atspi.Accessible"
_COMPONENT = "org.a11y.atspi.Component"
_TEXT = "org.a11y.atspi.Text"
_REGISTRY = ("org.a11y.atspi.Registry", "/org/a11y/atspi/accessible/root")
# Places of the states in AT-SPI's list.
CHECKED, FOCUSED, SELECTED, SHOWING = 4, 12, 23, 25


class NotThere(Exception):
    """What was waited for did not come."""


def missing_packages():
    """Debian packages that a screen needs and this machine lacks."""
    missing = [package for tool, package in TOOLS.items() if shutil.which(tool) is None]
    if not os.path.exists(BUS_LAUNCHER):
        missing.append("at-spi2-core")
    try:
        import dbus  # noqa: F401
    except ImportError:
        missing.append("python3-dbus")
    return missing


class Part:
    """Something in the window that a screen reader would meet."""

    def __init__(self, screen, owner, path):
        self.screen, self.owner, self.path = screen, owner, path

    def ask(self, interface, method, signature="", *arguments):
        return self.screen.bus.call_blocking(self.owner, self.path, interface, method, signature, arguments, timeout=60)

    @property
    def name(self):
        return str(self.ask("org.freedesktop.DBus.Properties", "Get", "ss", _ACCESSIBLE, "Name"))

    @property
    def role(self):
        return str(self.ask(_ACCESSIBLE, "GetRoleName"))

    @property
    def text(self):
        """What stands in a field."""
        return str(self.ask(_TEXT, "GetText", "ii", 0, -1))

    def has(self, state):
        low, high = (int(half) for half in self.ask(_ACCESSIBLE, "GetState"))
        return bool((low | high << 32) >> state & 1)

    def children(self):
        return [Part(self.screen, str(owner), str(path)) for owner, path in self.ask(_ACCESSIBLE, "GetChildren")]

    def box(self):
        """x, y, width and height on the screen."""
        return tuple(int(figure) for figure in self.ask(_COMPONENT, "GetExtents", "u", 0))

    def within(self):
        """All that shows within it, in the order of a screen reader."""
        for child in self.children():
            if child.has(SHOWING):
                yield child
                yield from child.within()


class Screen:
    """The X server, the buses and the program, all ended by `close`."""

    WIDTH, HEIGHT = 1280, 800

    def __init__(self, folder):
        """`folder` is an empty one that becomes the person's home."""
        self.folder = folder
        self.started = []
        self.program = None
        self.root = None
        self.bus = None
        self.errors = os.path.join(folder, "said-by-the-program")
        kept = {name: value for name, value in os.environ.items()
                if not name.startswith(("XDG_", "QT_", "QSG_", "DBUS_", "WAYLAND_", "LATHHOUSE_"))}
        runtime = os.path.join(folder, "runtime")
        os.mkdir(runtime, 0o700)
        self.environment = {
            **kept, "HOME": folder, "XDG_RUNTIME_DIR": runtime, "LC_ALL": "C.UTF-8", "TZ": "UTC",
            "QT_QPA_PLATFORM": "xcb", "QT_QUICK_BACKEND": "software", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
            # Libraries of the desktop keep their own; leaks are looked for where there is no X server.
            "ASAN_OPTIONS": os.environ.get("ASAN_OPTIONS", "") + ":detect_leaks=0",
            # A household lies beside nothing of the machine's.
            "GSETTINGS_BACKEND": "memory", "NO_AT_BRIDGE": "0"}
        try:
            self._start_server()
            self._start_buses()
        except BaseException:
            self.close()
            raise

    def _start(self, command, **options):
        process = subprocess.Popen(command, env=self.environment, stdin=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                                   **options)
        self.started.append(process)
        return process

    def _start_server(self):
        reader, writer = os.pipe()
        # It takes the first display that is free, and says which.
        self._start(["Xvfb", "-displayfd", str(writer), "-screen", "0", f"{self.WIDTH}x{self.HEIGHT}x24", "-nolisten",
                     "tcp", "-noreset", "-fbdir", self.folder], pass_fds=[writer], stdout=subprocess.DEVNULL)
        os.close(writer)
        with os.fdopen(reader) as told:
            display = told.readline().strip()
        if not display:
            raise NotThere("the X server did not start")
        self.environment["DISPLAY"] = ":" + display

    def _start_buses(self):
        import dbus
        session = self._start(["dbus-daemon", "--session", "--nofork", "--print-address=1"], stdout=subprocess.PIPE,
                              text=True)
        address = session.stdout.readline().strip()
        if not address:
            raise NotThere("the session's bus did not start")
        self.environment["DBUS_SESSION_BUS_ADDRESS"] = address
        with contextlib.closing(dbus.bus.BusConnection(address)) as bus:
            self.bus = dbus.bus.BusConnection(
                str(bus.call_blocking("org.a11y.Bus", "/org/a11y/bus", "org.a11y.Bus", "GetAddress", "", (), timeout=60)))

    # The program.

    def open(self, *command):
        """Starts the program, and waits until a screen reader finds it."""
        with open(self.errors, "ab") as errors:
            self.program = subprocess.Popen(command, env=self.environment, cwd=self.folder, stdin=subprocess.DEVNULL,
                                            stdout=errors, stderr=errors)

        def registered():
            for part in Part(self, *_REGISTRY).children():
                if part.children():
                    return part
            return None

        self.root = self.wait(registered, "the program on the accessibility bus")

    def shut(self):
        """Closes the window as the corner of its frame does; the program's exit status."""
        window = self.xdotool("search", "--onlyvisible", "--pid", str(self.program.pid)).split()
        if not window:
            raise NotThere("no window to close")
        for each in window:
            self._ask_to_close(int(each))
        try:
            return self.program.wait(PATIENCE)
        except subprocess.TimeoutExpired:
            raise NotThere("the end of the program after its window was closed") from None

    def _ask_to_close(self, window):
        class Message(ctypes.Structure):  # XClientMessageEvent
            _fields_ = [("type", ctypes.c_int), ("serial", ctypes.c_ulong), ("sent", ctypes.c_int),
                        ("display", ctypes.c_void_p), ("window", ctypes.c_ulong), ("kind", ctypes.c_ulong),
                        ("format", ctypes.c_int), ("data", ctypes.c_long * 5), ("rest", ctypes.c_long * 16)]

        x = ctypes.CDLL("libX11.so.6")
        x.XOpenDisplay.restype = ctypes.c_void_p
        x.XInternAtom.restype = ctypes.c_ulong
        x.XInternAtom.argtypes = [ctypes.c_void_p, ctypes.c_char_p, ctypes.c_int]
        x.XSendEvent.argtypes = [ctypes.c_void_p, ctypes.c_ulong, ctypes.c_int, ctypes.c_long, ctypes.c_void_p]
        x.XCloseDisplay.argtypes = [ctypes.c_void_p]
        display = x.XOpenDisplay(self.environment["DISPLAY"].encode())
        client_message = 33
        message = Message(type=client_message, sent=1, display=display, window=window, format=32,
                          kind=x.XInternAtom(display, b"WM_PROTOCOLS", 0))
        message.data[0] = x.XInternAtom(display, b"WM_DELETE_WINDOW", 0)
        x.XSendEvent(display, window, 0, 0, ctypes.byref(message))
        x.XCloseDisplay(display)  # Sends what waits.

    def said(self):
        """What the program wrote to standard output and standard error."""
        with open(self.errors, encoding="utf-8", errors="replace") as errors:
            return errors.read()

    # Looking.

    def wait(self, look, what, patience=PATIENCE):
        """What `look` returns once it is neither None nor False."""
        import dbus
        until = time.monotonic() + patience
        while True:
            try:
                found = look()
                if found is not None and found is not False:
                    return found
            except dbus.exceptions.DBusException:
                pass  # It went while it was looked at.
            if self.program is not None and self.program.poll() is not None:
                raise NotThere(f"{what}: the program ended with status {self.program.returncode}")
            if time.monotonic() > until:
                raise NotThere(what)
            time.sleep(0.05)

    def look(self, role, name, within=None):
        """The first part that shows, with that role and a name that the pattern matches; None where there is none."""
        for part in (within or self.root).within():
            if re.fullmatch(role, part.role) and re.search(name, part.name):
                return part
        return None

    def find(self, role, name, within=None):
        return self.wait(lambda: self.look(role, name, within), f"{role} /{name}/")

    # Acting.

    def xdotool(self, *words):
        done = subprocess.run(["xdotool", *words], env=self.environment, stdin=subprocess.DEVNULL, capture_output=True,
                              text=True, timeout=PATIENCE)
        return done.stdout

    def point_at(self, part):
        """The middle of a part, once it stands still and within the screen."""
        before = [None]

        def still():
            box = part.box()
            same, before[0] = box == before[0], box
            x, y = box[0] + box[2] // 2, box[1] + box[3] // 2
            return (x, y) if same and box[2] > 0 and 0 <= x < self.WIDTH and 0 <= y < self.HEIGHT else None

        return self.wait(still, f"{part.role} \"{part.name}\" to stand still within the screen")

    def click(self, part, share=0.5):
        """A click on a part, at that share of its width."""
        x, y = self.point_at(part)
        box = part.box()
        self.xdotool("mousemove", str(box[0] + int(share * box[2])), str(y), "click", "1")

    def drag(self, part, start, end):
        """Drags along a part, from one share of its width to another."""
        self.point_at(part)
        left, top, width, height = part.box()
        middle = str(top + height // 2)
        self.xdotool("mousemove", str(left + int(start * width)), middle, "mousedown", "1")
        for step in range(1, 11):
            self.xdotool("mousemove", str(left + int((start + (end - start) * step / 10) * width)), middle)
        self.xdotool("mouseup", "1")

    def key(self, *names):
        self.xdotool("key", "--clearmodifiers", *names)

    def type(self, words):
        self.xdotool("type", "--clearmodifiers", "--delay", "20", words)

    # The end.

    def picture(self, file):
        """Writes what the screen shows as a PNG file."""
        with open(os.path.join(self.folder, "Xvfb_screen0"), "rb") as shown:
            dump = shown.read()
        header = struct.unpack(">25I", dump[:100])  # The X server's own form, XWD.
        size, width, height, line, colours = header[0], header[4], header[5], header[12], header[19]
        start = size + 12 * colours
        rows = bytearray()
        for row in range(height):
            pixels = dump[start + row * line:start + row * line + 4 * width]
            rows.append(0)
            rgb = bytearray(3 * width)
            rgb[0::3], rgb[1::3], rgb[2::3] = pixels[2::4], pixels[1::4], pixels[0::4]
            rows += rgb

        def chunk(kind, data):
            return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

        with open(file, "wb") as out:
            out.write(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)) +
                      chunk(b"IDAT", zlib.compress(bytes(rows), 6)) + chunk(b"IEND", b""))

    def describe(self):
        """What a screen reader would find now, a line each."""
        lines = []
        for part in self.root.within():
            lines.append(f"  {part.role} \"{part.name}\" {part.box()}")
        return "\n".join(lines)

    def close(self):
        if self.bus is not None:
            with contextlib.suppress(Exception):
                self.bus.close()
        if self.program is not None and self.program.poll() is None:
            self.program.kill()
            self.program.wait()
        for process in reversed(self.started):
            process.terminate()
        for process in reversed(self.started):
            try:
                process.wait(10)
            except subprocess.TimeoutExpired:
                process.kill()
                process.wait()
