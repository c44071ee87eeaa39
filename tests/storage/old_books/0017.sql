BEGIN TRANSACTION;
CREATE TABLE airbrush (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	load_minutes INTEGER NOT NULL, 
	change_same_family INTEGER NOT NULL, 
	change_other_family INTEGER NOT NULL, 
	clean_minutes INTEGER NOT NULL, 
	idle_limit_minutes INTEGER NOT NULL, least_fill_ml FLOAT DEFAULT '1' NOT NULL, lost_ml FLOAT DEFAULT '0.5' NOT NULL, transfer FLOAT, most_fill_ml FLOAT, 
	CONSTRAINT pk_airbrush PRIMARY KEY (id), 
	CONSTRAINT fk_airbrush_parent FOREIGN KEY(parent) REFERENCES gear (id) ON DELETE CASCADE
);
INSERT INTO "airbrush" VALUES(132,131,0,'airbrush',3,6,10,6,20,2.0,0.8,0.35,5.0);
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0017');
CREATE TABLE application (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	coats INTEGER NOT NULL, share FLOAT, 
	CONSTRAINT pk_application PRIMARY KEY (id), 
	CONSTRAINT fk_application_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
INSERT INTO "application" VALUES(191,190,0,'lacquer primer, pale grey',1,0.4);
INSERT INTO "application" VALUES(203,202,0,'waterborne acrylic, skin, warm',2,NULL);
INSERT INTO "application" VALUES(206,205,0,'waterborne acrylic, night blue',2,NULL);
INSERT INTO "application" VALUES(209,208,0,'waterborne acrylic, moss green',1,NULL);
INSERT INTO "application" VALUES(212,211,0,'leather tone, 1 : 1',1,NULL);
INSERT INTO "application" VALUES(215,214,0,'waterborne acrylic, dark grey',1,NULL);
INSERT INTO "application" VALUES(218,217,0,'waterborne acrylic, stone grey',1,NULL);
INSERT INTO "application" VALUES(221,220,0,'waterborne acrylic, dark grey',1,NULL);
INSERT INTO "application" VALUES(224,223,0,'sepia wash, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(231,230,0,'night blue highlight, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(234,233,0,'skin highlight, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(237,236,0,'waterborne acrylic, ivory',1,NULL);
INSERT INTO "application" VALUES(240,239,0,'waterborne acrylic, lamp yellow',2,NULL);
INSERT INTO "application" VALUES(243,242,0,'cyanoacrylate glue',1,NULL);
INSERT INTO "application" VALUES(247,246,0,'matte clear, waterborne',1,NULL);
INSERT INTO "application" VALUES(256,255,0,'gloss clear, waterborne',1,NULL);
CREATE TABLE application_place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_application_place PRIMARY KEY (id), 
	CONSTRAINT fk_application_place_parent FOREIGN KEY(parent) REFERENCES application (id) ON DELETE CASCADE
);
INSERT INTO "application_place" VALUES(192,191,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(193,191,1,'figure/coat');
INSERT INTO "application_place" VALUES(194,191,2,'figure/trousers');
INSERT INTO "application_place" VALUES(195,191,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(196,191,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(197,191,5,'figure/lantern glass');
INSERT INTO "application_place" VALUES(198,191,6,'plinth/cobbles');
INSERT INTO "application_place" VALUES(199,191,7,'plinth/rim');
INSERT INTO "application_place" VALUES(204,203,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(207,206,0,'figure/coat');
INSERT INTO "application_place" VALUES(210,209,0,'figure/trousers');
INSERT INTO "application_place" VALUES(213,212,0,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(216,215,0,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(219,218,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(222,221,0,'plinth/rim');
INSERT INTO "application_place" VALUES(225,224,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(226,224,1,'figure/coat');
INSERT INTO "application_place" VALUES(227,224,2,'figure/trousers');
INSERT INTO "application_place" VALUES(228,224,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(229,224,4,'plinth/cobbles');
INSERT INTO "application_place" VALUES(232,231,0,'figure/coat');
INSERT INTO "application_place" VALUES(235,234,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(238,237,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(241,240,0,'figure/lantern glass');
INSERT INTO "application_place" VALUES(244,243,0,'figure/soles');
INSERT INTO "application_place" VALUES(245,243,1,'plinth/standing spots');
INSERT INTO "application_place" VALUES(248,247,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(249,247,1,'figure/coat');
INSERT INTO "application_place" VALUES(250,247,2,'figure/trousers');
INSERT INTO "application_place" VALUES(251,247,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(252,247,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(253,247,5,'plinth/cobbles');
INSERT INTO "application_place" VALUES(254,247,6,'plinth/rim');
INSERT INTO "application_place" VALUES(257,256,0,'figure/lantern glass');
CREATE TABLE bench_daylight (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_daylight PRIMARY KEY (id), 
	CONSTRAINT fk_bench_daylight_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_extra (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_extra PRIMARY KEY (id), 
	CONSTRAINT fk_bench_extra_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_quiet (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_quiet PRIMARY KEY (id), 
	CONSTRAINT fk_bench_quiet_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
INSERT INTO "bench_quiet" VALUES(130,127,0,'FREQ=DAILY','2026-02-28','22:00','07:00',1);
CREATE TABLE bench_skipped (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_bench_skipped PRIMARY KEY (id), 
	CONSTRAINT fk_bench_skipped_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_stretch (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_stretch PRIMARY KEY (id), 
	CONSTRAINT fk_bench_stretch_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
INSERT INTO "bench_stretch" VALUES(128,127,0,'FREQ=WEEKLY;BYDAY=FR','2026-03-01','19:00','22:00',1);
INSERT INTO "bench_stretch" VALUES(129,127,1,'FREQ=WEEKLY;BYDAY=SA','2026-03-01','17:30','21:30',1);
CREATE TABLE bench_time (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	zone TEXT NOT NULL, 
	CONSTRAINT pk_bench_time PRIMARY KEY (id)
);
INSERT INTO "bench_time" VALUES(127,0,'Europe/Warsaw');
CREATE TABLE card (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	"on" TEXT NOT NULL, 
	note TEXT NOT NULL, 
	photo TEXT NOT NULL, 
	CONSTRAINT pk_card PRIMARY KEY (id), 
	CONSTRAINT fk_card_parent FOREIGN KEY(parent) REFERENCES supplies (id) ON DELETE CASCADE
);
INSERT INTO "card" VALUES(153,148,0,'sand for sun','2031-02-27','a shade too warm','77aa.png');
CREATE TABLE card_drops (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	drops INTEGER NOT NULL, 
	CONSTRAINT pk_card_drops PRIMARY KEY (id), 
	CONSTRAINT fk_card_drops_parent FOREIGN KEY(parent) REFERENCES card (id) ON DELETE CASCADE
);
INSERT INTO "card_drops" VALUES(154,153,0,'waterborne acrylic, skin, warm',12);
CREATE TABLE card_tried (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	trial TEXT NOT NULL, 
	at TEXT NOT NULL, 
	held BOOLEAN NOT NULL, 
	CONSTRAINT pk_card_tried PRIMARY KEY (id), 
	CONSTRAINT fk_card_tried_parent FOREIGN KEY(parent) REFERENCES drying_card (id) ON DELETE CASCADE
);
INSERT INTO "card_tried" VALUES(170,169,0,'thumb','2031-03-04T20:40:00+01:00',1);
INSERT INTO "card_tried" VALUES(171,169,1,'tape','2031-03-05T19:30:00+01:00',0);
CREATE TABLE cleaned (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	airbrush TEXT NOT NULL, 
	at TEXT NOT NULL, 
	CONSTRAINT pk_cleaned PRIMARY KEY (id)
);
INSERT INTO "cleaned" VALUES(167,0,'airbrush','2031-03-04T19:21:00+01:00');
INSERT INTO "cleaned" VALUES(168,1,'one since given away','2031-03-03T19:12:00+01:00');
CREATE TABLE coating (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	family TEXT NOT NULL, 
	finish TEXT NOT NULL, 
	swatch TEXT NOT NULL, 
	solids FLOAT NOT NULL, 
	dry_film_um FLOAT NOT NULL, 
	pot_life_minutes INTEGER, 
	least_c FLOAT, 
	most_c FLOAT, 
	most_humidity_pct FLOAT, 
	in_stock_ml FLOAT NOT NULL, counted TEXT, bottle_ml FLOAT DEFAULT '17' NOT NULL, drops_per_ml FLOAT, opened TEXT, slowness FLOAT DEFAULT '1' NOT NULL, effect TEXT DEFAULT 'plain' NOT NULL, hiding TEXT, retarder FLOAT DEFAULT '0' NOT NULL, doubt FLOAT, steeper_kj_mol FLOAT DEFAULT '0' NOT NULL, 
	CONSTRAINT pk_coating PRIMARY KEY (id)
);
INSERT INTO "coating" VALUES(7,0,'lacquer primer, pale grey','solvent lacquer','matte','#b9babb',0.35,10.0,NULL,10.0,NULL,80.0,40.0,'2031-03-01T18:00:00+01:00',30.0,23.5,'2030-11-02',1.25,'metallic','hides badly',0.05,1.2,5.0);
INSERT INTO "coating" VALUES(11,1,'waterborne acrylic, skin, warm','waterborne acrylic','matte','#c98f6e',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(20,2,'waterborne acrylic, ivory','waterborne acrylic','matte','#efe6cf',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(29,3,'waterborne acrylic, night blue','waterborne acrylic','matte','#26324f',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(38,4,'waterborne acrylic, moss green','waterborne acrylic','matte','#5a6638',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(47,5,'waterborne acrylic, leather brown','waterborne acrylic','matte','#6e4a2c',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(56,6,'waterborne acrylic, dark grey','waterborne acrylic','matte','#3d4043',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(65,7,'waterborne acrylic, stone grey','waterborne acrylic','matte','#8b8a84',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(74,8,'waterborne acrylic, lamp yellow','waterborne acrylic','matte','#f0c644',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(83,9,'waterborne wash, sepia','waterborne acrylic','matte','#51402c',0.12,3.0,NULL,NULL,NULL,NULL,17.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(92,10,'matte clear, waterborne','waterborne acrylic','matte','#dfe2e2',0.35,10.0,NULL,NULL,NULL,NULL,30.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(101,11,'gloss clear, waterborne','waterborne acrylic','gloss','#e8eef0',0.35,10.0,NULL,NULL,NULL,NULL,30.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(110,12,'cyanoacrylate glue','cyanoacrylate','gloss','#f4f4f4',1.0,50.0,NULL,NULL,NULL,NULL,5.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(111,13,'water','water thinner','matte','#cfe6f2',0.35,20.0,NULL,NULL,NULL,NULL,500.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
CREATE TABLE coating_recoat (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	opens_state TEXT, 
	opens_minutes INTEGER, 
	opens_clock TEXT, 
	closes_state TEXT, 
	closes_minutes INTEGER, 
	closes_clock TEXT, 
	preparation TEXT NOT NULL, 
	preparation_minutes INTEGER NOT NULL, 
	merges BOOLEAN NOT NULL, best_state TEXT, best_minutes INTEGER, best_clock TEXT, 
	CONSTRAINT pk_coating_recoat PRIMARY KEY (id), 
	CONSTRAINT fk_coating_recoat_parent FOREIGN KEY(parent) REFERENCES coating (id) ON DELETE CASCADE
);
INSERT INTO "coating_recoat" VALUES(9,7,0,NULL,30,'elapsed',NULL,240,'film','none',0,0,NULL,60,'elapsed');
INSERT INTO "coating_recoat" VALUES(10,7,1,'dry-through',NULL,'elapsed',NULL,NULL,NULL,'scuff',6,0,NULL,NULL,NULL);
CREATE TABLE coating_time (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	state TEXT NOT NULL, 
	minutes INTEGER NOT NULL, 
	source TEXT NOT NULL, 
	CONSTRAINT pk_coating_time PRIMARY KEY (id), 
	CONSTRAINT fk_coating_time_parent FOREIGN KEY(parent) REFERENCES coating (id) ON DELETE CASCADE
);
INSERT INTO "coating_time" VALUES(8,7,0,'print-free',90,'label');
INSERT INTO "coating_time" VALUES(12,11,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(13,11,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(14,11,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(15,11,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(16,11,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(17,11,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(18,11,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(19,11,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(21,20,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(22,20,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(23,20,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(24,20,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(25,20,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(26,20,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(27,20,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(28,20,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(30,29,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(31,29,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(32,29,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(33,29,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(34,29,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(35,29,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(36,29,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(37,29,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(39,38,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(40,38,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(41,38,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(42,38,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(43,38,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(44,38,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(45,38,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(46,38,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(48,47,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(49,47,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(50,47,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(51,47,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(52,47,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(53,47,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(54,47,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(55,47,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(57,56,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(58,56,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(59,56,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(60,56,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(61,56,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(62,56,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(63,56,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(64,56,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(66,65,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(67,65,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(68,65,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(69,65,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(70,65,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(71,65,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(72,65,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(73,65,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(75,74,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(76,74,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(77,74,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(78,74,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(79,74,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(80,74,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(81,74,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(82,74,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(84,83,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(85,83,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(86,83,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(87,83,3,'dry-to-handle',30,'label (invented)');
INSERT INTO "coating_time" VALUES(88,83,4,'dry-to-recoat',40,'label (invented)');
INSERT INTO "coating_time" VALUES(89,83,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(90,83,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(91,83,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(93,92,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(94,92,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(95,92,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(96,92,3,'dry-to-handle',45,'label (invented)');
INSERT INTO "coating_time" VALUES(97,92,4,'dry-to-recoat',45,'label (invented)');
INSERT INTO "coating_time" VALUES(98,92,5,'print-free',240,'label (invented)');
INSERT INTO "coating_time" VALUES(99,92,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(100,92,7,'dry-through',480,'label (invented)');
INSERT INTO "coating_time" VALUES(102,101,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(103,101,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(104,101,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(105,101,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(106,101,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(107,101,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(108,101,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(109,101,7,'dry-through',75,'label (invented)');
CREATE TABLE consumable (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	unit TEXT NOT NULL, 
	in_stock FLOAT NOT NULL, 
	per_pass FLOAT NOT NULL, 
	counted TEXT, 
	CONSTRAINT pk_consumable PRIMARY KEY (id), 
	CONSTRAINT fk_consumable_parent FOREIGN KEY(parent) REFERENCES supplies (id) ON DELETE CASCADE
);
INSERT INTO "consumable" VALUES(149,148,0,'tape, 6 mm','m',9.0,0.4,'2031-02-20T18:00:00+01:00');
CREATE TABLE consumable_stage (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_consumable_stage PRIMARY KEY (id), 
	CONSTRAINT fk_consumable_stage_parent FOREIGN KEY(parent) REFERENCES consumable (id) ON DELETE CASCADE
);
INSERT INTO "consumable_stage" VALUES(150,149,0,'mask');
CREATE TABLE drying_card (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	laid TEXT NOT NULL, 
	location TEXT NOT NULL, 
	dry_film_um FLOAT, 
	CONSTRAINT pk_drying_card PRIMARY KEY (id)
);
INSERT INTO "drying_card" VALUES(169,0,'lacquer primer, pale grey','2031-03-04T20:00:00+01:00','window sill',18.0);
CREATE TABLE entry_needs (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_entry_needs PRIMARY KEY (id), 
	CONSTRAINT fk_entry_needs_parent FOREIGN KEY(parent) REFERENCES sequence_entry (id) ON DELETE CASCADE
);
INSERT INTO "entry_needs" VALUES(142,141,0,'pigments');
CREATE TABLE entry_unless (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_entry_unless PRIMARY KEY (id), 
	CONSTRAINT fk_entry_unless_parent FOREIGN KEY(parent) REFERENCES sequence_entry (id) ON DELETE CASCADE
);
CREATE TABLE forecast (
	id INTEGER NOT NULL, 
	project TEXT NOT NULL, 
	made INTEGER NOT NULL, 
	half INTEGER NOT NULL, 
	most INTEGER NOT NULL, 
	nearly INTEGER NOT NULL, 
	scale FLOAT NOT NULL, 
	CONSTRAINT pk_forecast PRIMARY KEY (id)
);
INSERT INTO "forecast" VALUES(1,'past project',29000000,29010000,29012000,29020000,1.0);
CREATE TABLE gate (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	"after" TEXT NOT NULL, 
	closing TEXT NOT NULL, 
	CONSTRAINT pk_gate PRIMARY KEY (id), 
	CONSTRAINT fk_gate_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE gate_window (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	opens_state TEXT, 
	opens_minutes INTEGER, 
	opens_clock TEXT, 
	closes_state TEXT, 
	closes_minutes INTEGER, 
	closes_clock TEXT, 
	preparation TEXT NOT NULL, 
	preparation_minutes INTEGER NOT NULL, 
	merges BOOLEAN NOT NULL, best_state TEXT, best_minutes INTEGER, best_clock TEXT, 
	CONSTRAINT pk_gate_window PRIMARY KEY (id), 
	CONSTRAINT fk_gate_window_parent FOREIGN KEY(parent) REFERENCES gate (id) ON DELETE CASCADE
);
CREATE TABLE gear (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_gear PRIMARY KEY (id)
);
INSERT INTO "gear" VALUES(131,0);
CREATE TABLE journal (
	id INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	name TEXT NOT NULL, 
	kind TEXT NOT NULL, 
	target INTEGER, 
	changes BLOB NOT NULL, verb TEXT DEFAULT '' NOT NULL, arguments TEXT, content TEXT DEFAULT '' NOT NULL, digest TEXT DEFAULT '' NOT NULL, 
	CONSTRAINT pk_journal PRIMARY KEY (id), 
	CONSTRAINT fk_journal_target FOREIGN KEY(target) REFERENCES journal (id)
);
INSERT INTO "journal" VALUES(1,'2026-11-30T11:26:49+00:00','new book','created',NULL,X'789CABAE0500017500F9','','{}','5fd30babb789cfd70f8596df4aa2682da69882c352f5e90997b53c7e1d1d0d44','c83c6aa00d53970b079db1b20b6a17f781669f2ad0007b080f444ad27891bf47');
INSERT INTO "journal" VALUES(2,'2026-11-30T11:43:30+00:00','upgrade to {version}','upgrade',NULL,X'789CABAE0500017500F9','','{"version": "0017"}','5fd30babb789cfd70f8596df4aa2682da69882c352f5e90997b53c7e1d1d0d44','6a30303a29344cb2c82bb36410cbd3c66b580084d4061e57c8f10e302b27e8b3');
CREATE TABLE leftover (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	ml FLOAT NOT NULL, 
	made TEXT NOT NULL, 
	keeps_days INTEGER NOT NULL, 
	CONSTRAINT pk_leftover PRIMARY KEY (id), 
	CONSTRAINT fk_leftover_parent FOREIGN KEY(parent) REFERENCES supplies (id) ON DELETE CASCADE
);
INSERT INTO "leftover" VALUES(151,148,0,'faded sand',2.5,'2031-03-01T20:00:00+01:00',21);
CREATE TABLE leftover_portion (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	parts FLOAT NOT NULL, 
	CONSTRAINT pk_leftover_portion PRIMARY KEY (id), 
	CONSTRAINT fk_leftover_portion_parent FOREIGN KEY(parent) REFERENCES leftover (id) ON DELETE CASCADE
);
INSERT INTO "leftover_portion" VALUES(152,151,0,'waterborne acrylic, skin, warm',2.0);
CREATE TABLE location (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	drying_places INTEGER NOT NULL, outdoors BOOLEAN DEFAULT 0 NOT NULL, movement TEXT DEFAULT 'room' NOT NULL, spraying BOOLEAN DEFAULT 0 NOT NULL, 
	CONSTRAINT pk_location PRIMARY KEY (id), 
	CONSTRAINT fk_location_parent FOREIGN KEY(parent) REFERENCES room (id) ON DELETE CASCADE
);
INSERT INTO "location" VALUES(125,124,0,'window sill',3,1,'fan',1);
CREATE TABLE location_weekend (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	CONSTRAINT pk_location_weekend PRIMARY KEY (id), 
	CONSTRAINT fk_location_weekend_parent FOREIGN KEY(parent) REFERENCES location (id) ON DELETE CASCADE
);
CREATE TABLE location_workday (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	CONSTRAINT pk_location_workday PRIMARY KEY (id), 
	CONSTRAINT fk_location_workday_parent FOREIGN KEY(parent) REFERENCES location (id) ON DELETE CASCADE
);
INSERT INTO "location_workday" VALUES(126,125,0,'00:00',21.0,45.0);
CREATE TABLE log_photo (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_log_photo PRIMARY KEY (id), 
	CONSTRAINT fk_log_photo_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_photo" VALUES(175,172,0,'0f3a.jpg');
CREATE TABLE log_ticked (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_log_ticked PRIMARY KEY (id), 
	CONSTRAINT fk_log_ticked_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_ticked" VALUES(174,172,0,'figure/face and hands');
CREATE TABLE log_used (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	ml FLOAT NOT NULL, 
	CONSTRAINT pk_log_used PRIMARY KEY (id), 
	CONSTRAINT fk_log_used_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_used" VALUES(173,172,0,'lacquer primer, pale grey',1.25);
CREATE TABLE made_change (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_made_change PRIMARY KEY (id), 
	CONSTRAINT fk_made_change_parent FOREIGN KEY(parent) REFERENCES model_made (id) ON DELETE CASCADE
);
INSERT INTO "made_change" VALUES(261,258,0,'no decals');
INSERT INTO "made_change" VALUES(262,258,1,'brush instead of airbrush');
CREATE TABLE made_colour (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	colour TEXT NOT NULL, 
	coating TEXT NOT NULL, 
	CONSTRAINT pk_made_colour PRIMARY KEY (id), 
	CONSTRAINT fk_made_colour_parent FOREIGN KEY(parent) REFERENCES model_made (id) ON DELETE CASCADE
);
INSERT INTO "made_colour" VALUES(260,258,0,'base','waterborne acrylic, skin, warm');
CREATE TABLE made_option (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_made_option PRIMARY KEY (id), 
	CONSTRAINT fk_made_option_parent FOREIGN KEY(parent) REFERENCES model_made (id) ON DELETE CASCADE
);
INSERT INTO "made_option" VALUES(259,258,0,'pigments');
CREATE TABLE measure (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	shape TEXT NOT NULL, 
	length_mm FLOAT NOT NULL, 
	width_mm FLOAT NOT NULL, 
	height_mm FLOAT NOT NULL, 
	count INTEGER NOT NULL, 
	CONSTRAINT pk_measure PRIMARY KEY (id), 
	CONSTRAINT fk_measure_parent FOREIGN KEY(parent) REFERENCES place (id) ON DELETE CASCADE
);
INSERT INTO "measure" VALUES(179,178,0,'cylinder',20.0,8.5,0.0,4);
CREATE TABLE meta (
	name TEXT NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_meta PRIMARY KEY (name)
);
INSERT INTO "meta" VALUES('last_id','262');
CREATE TABLE mix (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	life_minutes INTEGER NOT NULL, 
	swatch TEXT, 
	CONSTRAINT pk_mix PRIMARY KEY (id)
);
INSERT INTO "mix" VALUES(112,0,'sepia wash, 2 : 3',480,'#75644d');
INSERT INTO "mix" VALUES(115,1,'night blue highlight, 2 : 3',90,'#767a84');
INSERT INTO "mix" VALUES(118,2,'skin highlight, 2 : 3',90,'#d8b295');
INSERT INTO "mix" VALUES(121,3,'leather tone, 1 : 1',120,'#564538');
CREATE TABLE mix_portion (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	parts FLOAT NOT NULL, 
	CONSTRAINT pk_mix_portion PRIMARY KEY (id), 
	CONSTRAINT fk_mix_portion_parent FOREIGN KEY(parent) REFERENCES mix (id) ON DELETE CASCADE
);
INSERT INTO "mix_portion" VALUES(113,112,0,'waterborne wash, sepia',2.0);
INSERT INTO "mix_portion" VALUES(114,112,1,'water',3.0);
INSERT INTO "mix_portion" VALUES(116,115,0,'waterborne acrylic, ivory',2.0);
INSERT INTO "mix_portion" VALUES(117,115,1,'waterborne acrylic, night blue',3.0);
INSERT INTO "mix_portion" VALUES(119,118,0,'waterborne acrylic, ivory',2.0);
INSERT INTO "mix_portion" VALUES(120,118,1,'waterborne acrylic, skin, warm',3.0);
INSERT INTO "mix_portion" VALUES(122,121,0,'waterborne acrylic, leather brown',1.0);
INSERT INTO "mix_portion" VALUES(123,121,1,'waterborne acrylic, dark grey',1.0);
CREATE TABLE model (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	scale TEXT NOT NULL, real_size_length_m FLOAT, real_size_width_m FLOAT, real_size_height_m FLOAT, target TEXT, weight INTEGER DEFAULT '1' NOT NULL, early BOOLEAN DEFAULT '0' NOT NULL, kind TEXT DEFAULT 'other' NOT NULL, 
	CONSTRAINT pk_model PRIMARY KEY (id), 
	CONSTRAINT fk_model_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "model" VALUES(176,1,0,'Lamplighter with a pole','1:35',4.2,1.8,1.9,NULL,1,0,'figure');
CREATE TABLE model_made (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	sequence TEXT NOT NULL, 
	CONSTRAINT pk_model_made PRIMARY KEY (id), 
	CONSTRAINT fk_model_made_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "model_made" VALUES(258,176,0,'house order');
CREATE TABLE pace (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_pace PRIMARY KEY (id)
);
INSERT INTO "pace" VALUES(165,0);
CREATE TABLE pace_learned (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	stage TEXT NOT NULL, 
	tool TEXT NOT NULL, 
	factor FLOAT NOT NULL, 
	since TEXT NOT NULL, 
	CONSTRAINT pk_pace_learned PRIMARY KEY (id), 
	CONSTRAINT fk_pace_learned_parent FOREIGN KEY(parent) REFERENCES pace (id) ON DELETE CASCADE
);
INSERT INTO "pace_learned" VALUES(166,165,0,'base','airbrush',1.4,'2031-03-01T00:00:00+01:00');
CREATE TABLE part (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	holder TEXT NOT NULL, 
	stands INTEGER NOT NULL, 
	material TEXT NOT NULL, 
	stressed BOOLEAN NOT NULL, 
	CONSTRAINT pk_part PRIMARY KEY (id), 
	CONSTRAINT fk_part_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "part" VALUES(177,176,0,'figure','cork with a pin',1,'hard styrene',0);
INSERT INTO "part" VALUES(186,176,1,'plinth','bottle cap',1,'hard styrene',0);
CREATE TABLE place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	side TEXT NOT NULL, 
	area_cm2 FLOAT NOT NULL, detail FLOAT DEFAULT '1' NOT NULL, share FLOAT DEFAULT '0' NOT NULL, 
	CONSTRAINT pk_place PRIMARY KEY (id), 
	CONSTRAINT fk_place_parent FOREIGN KEY(parent) REFERENCES part (id) ON DELETE CASCADE
);
INSERT INTO "place" VALUES(178,177,0,'face and hands','top',3.0,1.3,0.35);
INSERT INTO "place" VALUES(180,177,1,'coat','top',14.0,1.0,0.0);
INSERT INTO "place" VALUES(181,177,2,'trousers','top',6.0,1.0,0.0);
INSERT INTO "place" VALUES(182,177,3,'boots and satchel','top',5.0,1.0,0.0);
INSERT INTO "place" VALUES(183,177,4,'pole and lantern','top',4.0,1.0,0.0);
INSERT INTO "place" VALUES(184,177,5,'lantern glass','top',0.5,1.0,0.0);
INSERT INTO "place" VALUES(185,177,6,'soles','under',0.5,1.0,0.0);
INSERT INTO "place" VALUES(187,186,0,'cobbles','top',12.0,1.0,0.0);
INSERT INTO "place" VALUES(188,186,1,'rim','top',10.0,1.0,0.0);
INSERT INTO "place" VALUES(189,186,2,'standing spots','top',0.5,1.0,0.0);
CREATE TABLE preference (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_preference PRIMARY KEY (id), 
	CONSTRAINT fk_preference_parent FOREIGN KEY(parent) REFERENCES preferences (id) ON DELETE CASCADE
);
INSERT INTO "preference" VALUES(156,155,0,'finish');
INSERT INTO "preference" VALUES(157,155,1,'late');
INSERT INTO "preference" VALUES(158,155,2,'stretches');
INSERT INTO "preference" VALUES(159,155,3,'setup_minutes');
INSERT INTO "preference" VALUES(160,155,4,'moved');
CREATE TABLE preference_likely (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_preference_likely PRIMARY KEY (id), 
	CONSTRAINT fk_preference_likely_parent FOREIGN KEY(parent) REFERENCES preferences (id) ON DELETE CASCADE
);
INSERT INTO "preference_likely" VALUES(161,155,0,'another coat');
INSERT INTO "preference_likely" VALUES(162,155,1,'a wash');
INSERT INTO "preference_likely" VALUES(163,155,2,'decals');
INSERT INTO "preference_likely" VALUES(164,155,3,'a clear coat');
CREATE TABLE preferences (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, staying TEXT DEFAULT 'keep close' NOT NULL, 
	CONSTRAINT pk_preferences PRIMARY KEY (id)
);
INSERT INTO "preferences" VALUES(155,0,'keep close');
CREATE TABLE project (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	target TEXT, 
	weight INTEGER NOT NULL, 
	active BOOLEAN NOT NULL, 
	note TEXT NOT NULL, pilot TEXT DEFAULT '' NOT NULL, begins TEXT, 
	CONSTRAINT pk_project PRIMARY KEY (id)
);
INSERT INTO "project" VALUES(1,0,'Lone lamplighter','2026-03-07',1,1,'kept through every upgrade','Lamplighter with a pole','2031-02-25');
CREATE TABLE project_diary (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	event TEXT NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	text TEXT NOT NULL, 
	CONSTRAINT pk_project_diary PRIMARY KEY (id), 
	CONSTRAINT fk_project_diary_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_diary" VALUES(6,1,0,'2031-03-02T20:12:00+01:00','still tacky','Lamplighter with a pole','prime','left a print on the hood');
CREATE TABLE project_log (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	coat INTEGER NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT, minutes INTEGER, planned INTEGER, note TEXT DEFAULT '' NOT NULL, temperature_c FLOAT, humidity_pct FLOAT, airbrush TEXT DEFAULT '' NOT NULL, 
	CONSTRAINT pk_project_log PRIMARY KEY (id), 
	CONSTRAINT fk_project_log_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_log" VALUES(172,1,0,'Lamplighter with a pole','prime',1,'2031-03-04T19:00:00+01:00','2031-03-04T19:12:00+01:00',14,12,'both sides',17.5,61.0,'airbrush');
CREATE TABLE project_observed (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	coat INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	state TEXT NOT NULL, 
	reached BOOLEAN NOT NULL, 
	CONSTRAINT pk_project_observed PRIMARY KEY (id), 
	CONSTRAINT fk_project_observed_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_observed" VALUES(5,1,0,'Lamplighter with a pole','prime',1,'2031-03-02T20:10:00+01:00','dry-to-handle',0);
CREATE TABLE project_pin (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	coat INTEGER, 
	"on" TEXT, 
	start TEXT, 
	"end" TEXT, not_before TEXT, beside TEXT, 
	CONSTRAINT pk_project_pin PRIMARY KEY (id), 
	CONSTRAINT fk_project_pin_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_pin" VALUES(2,1,0,'Lamplighter with a pole','glass-shine',NULL,'2031-03-07',NULL,NULL,NULL,NULL);
INSERT INTO "project_pin" VALUES(3,1,1,'Lamplighter with a pole','glass-shine',NULL,NULL,NULL,NULL,'2031-03-09T19:00:00+01:00',NULL);
INSERT INTO "project_pin" VALUES(4,1,2,'Lamplighter with a pole','glass-shine',NULL,NULL,NULL,NULL,NULL,'Lamplighter with a pole/matte');
CREATE TABLE promise (
	id INTEGER NOT NULL, 
	told_by TEXT NOT NULL, 
	start INTEGER NOT NULL, 
	"end" INTEGER NOT NULL, 
	CONSTRAINT pk_promise PRIMARY KEY (id)
);
CREATE TABLE reading (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	location TEXT NOT NULL, 
	CONSTRAINT pk_reading PRIMARY KEY (id), 
	CONSTRAINT fk_reading_parent FOREIGN KEY(parent) REFERENCES room (id) ON DELETE CASCADE
);
CREATE TABLE room (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	volume_m3 FLOAT NOT NULL, 
	CONSTRAINT pk_room PRIMARY KEY (id)
);
INSERT INTO "room" VALUES(124,0,40.0);
CREATE TABLE sequence (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	note TEXT NOT NULL, 
	made_for_cm2 FLOAT NOT NULL, 
	CONSTRAINT pk_sequence PRIMARY KEY (id)
);
INSERT INTO "sequence" VALUES(133,0,'house order','invented',80.0);
CREATE TABLE sequence_application (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	coats INTEGER NOT NULL, 
	share FLOAT, 
	CONSTRAINT pk_sequence_application PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_application_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
INSERT INTO "sequence_application" VALUES(138,137,0,'base',1,0.9);
CREATE TABLE sequence_application_place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_sequence_application_place PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_application_place_parent FOREIGN KEY(parent) REFERENCES sequence_application (id) ON DELETE CASCADE
);
INSERT INTO "sequence_application_place" VALUES(139,138,0,'*');
CREATE TABLE sequence_colour (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	usual TEXT NOT NULL, 
	note TEXT NOT NULL, 
	CONSTRAINT pk_sequence_colour PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_colour_parent FOREIGN KEY(parent) REFERENCES sequence (id) ON DELETE CASCADE
);
INSERT INTO "sequence_colour" VALUES(134,133,0,'base','waterborne acrylic, skin, warm','the hull');
CREATE TABLE sequence_entry (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_sequence_entry PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_entry_parent FOREIGN KEY(parent) REFERENCES sequence (id) ON DELETE CASCADE
);
INSERT INTO "sequence_entry" VALUES(136,133,0);
INSERT INTO "sequence_entry" VALUES(141,133,1);
CREATE TABLE sequence_gate (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	"after" TEXT NOT NULL, 
	closing TEXT NOT NULL, 
	CONSTRAINT pk_sequence_gate PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_gate_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
INSERT INTO "sequence_gate" VALUES(145,143,0,'base','start');
CREATE TABLE sequence_gate_window (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	opens_state TEXT, 
	opens_minutes INTEGER, 
	opens_clock TEXT, 
	closes_state TEXT, 
	closes_minutes INTEGER, 
	closes_clock TEXT, 
	preparation TEXT NOT NULL, 
	preparation_minutes INTEGER NOT NULL, 
	merges BOOLEAN NOT NULL, best_state TEXT, best_minutes INTEGER, best_clock TEXT, 
	CONSTRAINT pk_sequence_gate_window PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_gate_window_parent FOREIGN KEY(parent) REFERENCES sequence_gate (id) ON DELETE CASCADE
);
INSERT INTO "sequence_gate_window" VALUES(146,145,0,NULL,60,'elapsed',NULL,NULL,NULL,'none',0,0,NULL,NULL,NULL);
CREATE TABLE sequence_option (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	usual BOOLEAN NOT NULL, 
	choice TEXT NOT NULL, 
	note TEXT NOT NULL, 
	CONSTRAINT pk_sequence_option PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_option_parent FOREIGN KEY(parent) REFERENCES sequence (id) ON DELETE CASCADE
);
INSERT INTO "sequence_option" VALUES(135,133,0,'pigments',1,'dust','dry dust');
CREATE TABLE sequence_step (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	step_id TEXT NOT NULL, 
	stage TEXT NOT NULL, 
	title TEXT NOT NULL, 
	tool TEXT NOT NULL, 
	minutes_fixed INTEGER NOT NULL, 
	minutes_per_part INTEGER NOT NULL, 
	minutes_per_change INTEGER NOT NULL, 
	role TEXT, 
	split_least INTEGER, 
	helper BOOLEAN NOT NULL, 
	dries_in TEXT NOT NULL, 
	scraped BOOLEAN NOT NULL, 
	stands INTEGER, 
	look_in INTEGER, 
	CONSTRAINT pk_sequence_step PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_step_parent FOREIGN KEY(parent) REFERENCES sequence_entry (id) ON DELETE CASCADE
);
INSERT INTO "sequence_step" VALUES(137,136,0,'base','base','','airbrush',4,2,1,NULL,NULL,0,'',0,NULL,20);
INSERT INTO "sequence_step" VALUES(143,141,0,'dust','pigment','','brush',5,0,0,NULL,NULL,0,'',0,NULL,NULL);
CREATE TABLE sequence_step_after (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_sequence_step_after PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_step_after_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
INSERT INTO "sequence_step_after" VALUES(147,143,0,'base');
CREATE TABLE sequence_step_or_in (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_sequence_step_or_in PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_step_or_in_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
CREATE TABLE sequence_step_touches (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_sequence_step_touches PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_step_touches_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
INSERT INTO "sequence_step_touches" VALUES(144,143,0,'wheels');
CREATE TABLE sequence_step_trait (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_sequence_step_trait PRIMARY KEY (id), 
	CONSTRAINT fk_sequence_step_trait_parent FOREIGN KEY(parent) REFERENCES sequence_step (id) ON DELETE CASCADE
);
INSERT INTO "sequence_step_trait" VALUES(140,137,0,'smells');
CREATE TABLE shown_plan (
	id INTEGER NOT NULL, 
	digest TEXT NOT NULL, 
	"plan" BLOB NOT NULL, 
	CONSTRAINT pk_shown_plan PRIMARY KEY (id)
);
CREATE TABLE step (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	step_id TEXT NOT NULL, 
	stage TEXT NOT NULL, 
	title TEXT NOT NULL, 
	tool TEXT NOT NULL, 
	minutes_fixed INTEGER NOT NULL, 
	minutes_per_part INTEGER NOT NULL, 
	role TEXT, 
	split_least INTEGER, 
	helper BOOLEAN NOT NULL, 
	dries_in TEXT NOT NULL, 
	scraped BOOLEAN NOT NULL, 
	stands INTEGER, minutes_per_change INTEGER DEFAULT '0' NOT NULL, look_in INTEGER, 
	CONSTRAINT pk_step PRIMARY KEY (id), 
	CONSTRAINT fk_step_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "step" VALUES(190,176,0,'prime','prime','Prime figure and plinth in thin passes from all sides','airbrush',2,3,NULL,NULL,0,'',0,NULL,2,30);
INSERT INTO "step" VALUES(202,176,1,'skin','base','Face and hands','brush',8,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(205,176,2,'coat','base','The long coat, night blue','brush',10,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(208,176,3,'trousers','base','Trousers, moss green','brush',7,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(211,176,4,'leather','detail','Boots and satchel','brush',8,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(214,176,5,'pole','detail','Lamp pole and lantern frame, dark grey','brush',6,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(217,176,6,'cobbles','base','Stone grey on the cobbles','brush',6,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(220,176,7,'rim','base','Dark grey round the rim of the plinth','brush',4,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(223,176,8,'sepia','wash','Sepia wash into folds, fingers and between the cobbles','brush',4,5,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(230,176,9,'coat-light','highlight','Upper folds of the coat, two parts ivory to three of blue','brush',14,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(233,176,10,'skin-light','highlight','Nose, cheeks and knuckles','brush',10,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(236,176,11,'dry-brush','dry-brush','Dry-brush ivory over cobbles','brush',5,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(239,176,12,'glass','detail','Lamp yellow in the lantern','brush',4,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(242,176,13,'join','join','Glue the figure on the plinth','hand',5,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(246,176,14,'matte','matte','Matte clear over everything','airbrush',2,3,'final',NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(255,176,15,'glass-shine','varnish','A drop of gloss on the lantern glass','brush',3,0,NULL,NULL,0,'',0,NULL,0,NULL);
CREATE TABLE step_after (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_after PRIMARY KEY (id), 
	CONSTRAINT fk_step_after_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE step_or_in (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_or_in PRIMARY KEY (id), 
	CONSTRAINT fk_step_or_in_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE step_touches (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_touches PRIMARY KEY (id), 
	CONSTRAINT fk_step_touches_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE step_trait (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_trait PRIMARY KEY (id), 
	CONSTRAINT fk_step_trait_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
INSERT INTO "step_trait" VALUES(200,190,0,'smells');
INSERT INTO "step_trait" VALUES(201,190,1,'noisy');
CREATE TABLE supplies (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	margin_pct FLOAT NOT NULL, 
	CONSTRAINT pk_supplies PRIMARY KEY (id)
);
INSERT INTO "supplies" VALUES(148,0,15.0);
CREATE INDEX ix_airbrush_parent ON airbrush (parent);
CREATE INDEX ix_bench_daylight_parent ON bench_daylight (parent);
CREATE INDEX ix_bench_extra_parent ON bench_extra (parent);
CREATE INDEX ix_bench_quiet_parent ON bench_quiet (parent);
CREATE INDEX ix_bench_skipped_parent ON bench_skipped (parent);
CREATE INDEX ix_bench_stretch_parent ON bench_stretch (parent);
CREATE INDEX ix_coating_recoat_parent ON coating_recoat (parent);
CREATE INDEX ix_coating_time_parent ON coating_time (parent);
CREATE INDEX ix_location_parent ON location (parent);
CREATE INDEX ix_mix_portion_parent ON mix_portion (parent);
CREATE INDEX ix_model_parent ON model (parent);
CREATE INDEX ix_project_log_parent ON project_log (parent);
CREATE INDEX ix_project_pin_parent ON project_pin (parent);
CREATE INDEX ix_reading_parent ON reading (parent);
CREATE INDEX ix_location_weekend_parent ON location_weekend (parent);
CREATE INDEX ix_location_workday_parent ON location_workday (parent);
CREATE INDEX ix_part_parent ON part (parent);
CREATE INDEX ix_step_parent ON step (parent);
CREATE INDEX ix_application_parent ON application (parent);
CREATE INDEX ix_gate_parent ON gate (parent);
CREATE INDEX ix_place_parent ON place (parent);
CREATE INDEX ix_step_after_parent ON step_after (parent);
CREATE INDEX ix_step_touches_parent ON step_touches (parent);
CREATE INDEX ix_application_place_parent ON application_place (parent);
CREATE INDEX ix_gate_window_parent ON gate_window (parent);
CREATE INDEX ix_log_used_parent ON log_used (parent);
CREATE INDEX ix_log_ticked_parent ON log_ticked (parent);
CREATE INDEX ix_log_photo_parent ON log_photo (parent);
CREATE INDEX ix_project_observed_parent ON project_observed (parent);
CREATE INDEX ix_project_diary_parent ON project_diary (parent);
CREATE INDEX ix_model_made_parent ON model_made (parent);
CREATE INDEX ix_made_option_parent ON made_option (parent);
CREATE INDEX ix_made_colour_parent ON made_colour (parent);
CREATE INDEX ix_measure_parent ON measure (parent);
CREATE INDEX ix_step_or_in_parent ON step_or_in (parent);
CREATE INDEX ix_step_trait_parent ON step_trait (parent);
CREATE INDEX ix_sequence_colour_parent ON sequence_colour (parent);
CREATE INDEX ix_sequence_option_parent ON sequence_option (parent);
CREATE INDEX ix_sequence_entry_parent ON sequence_entry (parent);
CREATE INDEX ix_entry_needs_parent ON entry_needs (parent);
CREATE INDEX ix_entry_unless_parent ON entry_unless (parent);
CREATE INDEX ix_sequence_step_parent ON sequence_step (parent);
CREATE INDEX ix_sequence_step_touches_parent ON sequence_step_touches (parent);
CREATE INDEX ix_sequence_step_after_parent ON sequence_step_after (parent);
CREATE INDEX ix_sequence_step_or_in_parent ON sequence_step_or_in (parent);
CREATE INDEX ix_sequence_step_trait_parent ON sequence_step_trait (parent);
CREATE INDEX ix_sequence_application_parent ON sequence_application (parent);
CREATE INDEX ix_sequence_application_place_parent ON sequence_application_place (parent);
CREATE INDEX ix_sequence_gate_parent ON sequence_gate (parent);
CREATE INDEX ix_sequence_gate_window_parent ON sequence_gate_window (parent);
CREATE INDEX ix_consumable_parent ON consumable (parent);
CREATE INDEX ix_consumable_stage_parent ON consumable_stage (parent);
CREATE INDEX ix_leftover_parent ON leftover (parent);
CREATE INDEX ix_leftover_portion_parent ON leftover_portion (parent);
CREATE INDEX ix_card_parent ON card (parent);
CREATE INDEX ix_card_drops_parent ON card_drops (parent);
CREATE INDEX ix_preference_parent ON preference (parent);
CREATE INDEX ix_pace_learned_parent ON pace_learned (parent);
CREATE INDEX ix_preference_likely_parent ON preference_likely (parent);
CREATE INDEX ix_card_tried_parent ON card_tried (parent);
CREATE INDEX ix_made_change_parent ON made_change (parent);
COMMIT;
