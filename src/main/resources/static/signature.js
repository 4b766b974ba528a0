// Lets a finger or a mouse sign; without this script the typed name stands alone.
(function () {
  'use strict';
  document.querySelectorAll('[data-sign]').forEach(function (sign) {
    var place = sign.querySelector('[data-sign-place]');
    var canvas = sign.querySelector('[data-sign-canvas]');
    var drawing = sign.querySelector('[data-sign-drawing]');
    var pen = canvas.getContext('2d');
    var down = false;
    place.hidden = false;
    blank();
    if (drawing.value) {
      var before = new Image();
      before.onload = function () { pen.drawImage(before, 0, 0); };
      before.src = drawing.value;
    }

    function blank() {
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, canvas.width, canvas.height);
      pen.strokeStyle = '#1a2028';
      pen.lineWidth = 3;
      pen.lineCap = 'round';
      pen.lineJoin = 'round';
    }

    function at(event) {
      var box = canvas.getBoundingClientRect();
      return [(event.clientX - box.left) * canvas.width / box.width, (event.clientY - box.top) * canvas.height / box.height];
    }

    canvas.addEventListener('pointerdown', function (event) {
      down = true;
      canvas.setPointerCapture(event.pointerId);
      pen.beginPath();
      pen.moveTo.apply(pen, at(event));
      event.preventDefault();
    });
    canvas.addEventListener('pointermove', function (event) {
      if (down) {
        pen.lineTo.apply(pen, at(event));
        pen.stroke();
      }
    });
    ['pointerup', 'pointercancel'].forEach(function (end) {
      canvas.addEventListener(end, function () {
        if (down) {
          down = false;
          drawing.value = canvas.toDataURL('image/png');
        }
      });
    });
    sign.querySelector('[data-sign-clear]').addEventListener('click', function () {
      blank();
      drawing.value = '';
    });
  });
})();
