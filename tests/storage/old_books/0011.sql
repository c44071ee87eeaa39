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
INSERT INTO "alembic_version" VALUES('0011');
CREATE TABLE application (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	coats INTEGER NOT NULL, share FLOAT, 
	CONSTRAINT pk_application PRIMARY KEY (id), 
	CONSTRAINT fk_application_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
INSERT INTO "application" VALUES(184,183,0,'lacquer primer, pale grey',1,0.4);
INSERT INTO "application" VALUES(196,195,0,'waterborne acrylic, skin, warm',2,NULL);
INSERT INTO "application" VALUES(199,198,0,'waterborne acrylic, night blue',2,NULL);
INSERT INTO "application" VALUES(202,201,0,'waterborne acrylic, moss green',1,NULL);
INSERT INTO "application" VALUES(205,204,0,'leather tone, 1 : 1',1,NULL);
INSERT INTO "application" VALUES(208,207,0,'waterborne acrylic, dark grey',1,NULL);
INSERT INTO "application" VALUES(211,210,0,'waterborne acrylic, stone grey',1,NULL);
INSERT INTO "application" VALUES(214,213,0,'waterborne acrylic, dark grey',1,NULL);
INSERT INTO "application" VALUES(217,216,0,'sepia wash, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(224,223,0,'night blue highlight, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(227,226,0,'skin highlight, 2 : 3',1,NULL);
INSERT INTO "application" VALUES(230,229,0,'waterborne acrylic, ivory',1,NULL);
INSERT INTO "application" VALUES(233,232,0,'waterborne acrylic, lamp yellow',2,NULL);
INSERT INTO "application" VALUES(236,235,0,'cyanoacrylate glue',1,NULL);
INSERT INTO "application" VALUES(240,239,0,'matte clear, waterborne',1,NULL);
INSERT INTO "application" VALUES(249,248,0,'gloss clear, waterborne',1,NULL);
CREATE TABLE application_place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_application_place PRIMARY KEY (id), 
	CONSTRAINT fk_application_place_parent FOREIGN KEY(parent) REFERENCES application (id) ON DELETE CASCADE
);
INSERT INTO "application_place" VALUES(185,184,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(186,184,1,'figure/coat');
INSERT INTO "application_place" VALUES(187,184,2,'figure/trousers');
INSERT INTO "application_place" VALUES(188,184,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(189,184,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(190,184,5,'figure/lantern glass');
INSERT INTO "application_place" VALUES(191,184,6,'plinth/cobbles');
INSERT INTO "application_place" VALUES(192,184,7,'plinth/rim');
INSERT INTO "application_place" VALUES(197,196,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(200,199,0,'figure/coat');
INSERT INTO "application_place" VALUES(203,202,0,'figure/trousers');
INSERT INTO "application_place" VALUES(206,205,0,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(209,208,0,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(212,211,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(215,214,0,'plinth/rim');
INSERT INTO "application_place" VALUES(218,217,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(219,217,1,'figure/coat');
INSERT INTO "application_place" VALUES(220,217,2,'figure/trousers');
INSERT INTO "application_place" VALUES(221,217,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(222,217,4,'plinth/cobbles');
INSERT INTO "application_place" VALUES(225,224,0,'figure/coat');
INSERT INTO "application_place" VALUES(228,227,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(231,230,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(234,233,0,'figure/lantern glass');
INSERT INTO "application_place" VALUES(237,236,0,'figure/soles');
INSERT INTO "application_place" VALUES(238,236,1,'plinth/standing spots');
INSERT INTO "application_place" VALUES(241,240,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(242,240,1,'figure/coat');
INSERT INTO "application_place" VALUES(243,240,2,'figure/trousers');
INSERT INTO "application_place" VALUES(244,240,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(245,240,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(246,240,5,'plinth/cobbles');
INSERT INTO "application_place" VALUES(247,240,6,'plinth/rim');
INSERT INTO "application_place" VALUES(250,249,0,'figure/lantern glass');
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
CREATE TABLE cleaned (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	airbrush TEXT NOT NULL, 
	at TEXT NOT NULL, 
	CONSTRAINT pk_cleaned PRIMARY KEY (id)
);
INSERT INTO "cleaned" VALUES(163,0,'airbrush','2031-03-04T19:21:00+01:00');
INSERT INTO "cleaned" VALUES(164,1,'one since given away','2031-03-03T19:12:00+01:00');
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
INSERT INTO "coating" VALUES(362,0,'lacquer primer, pale grey','solvent lacquer','matte','#b9babb',0.35,10.0,NULL,10.0,NULL,80.0,40.0,'2031-03-01T18:00:00+01:00',30.0,23.5,'2030-11-02',1.25,'metallic','hides badly',0.05,1.2,5.0);
INSERT INTO "coating" VALUES(366,1,'waterborne acrylic, skin, warm','waterborne acrylic','matte','#c98f6e',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(375,2,'waterborne acrylic, ivory','waterborne acrylic','matte','#efe6cf',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(384,3,'waterborne acrylic, night blue','waterborne acrylic','matte','#26324f',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(393,4,'waterborne acrylic, moss green','waterborne acrylic','matte','#5a6638',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(402,5,'waterborne acrylic, leather brown','waterborne acrylic','matte','#6e4a2c',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(411,6,'waterborne acrylic, dark grey','waterborne acrylic','matte','#3d4043',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(420,7,'waterborne acrylic, stone grey','waterborne acrylic','matte','#8b8a84',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(429,8,'waterborne acrylic, lamp yellow','waterborne acrylic','matte','#f0c644',0.35,10.0,NULL,NULL,NULL,NULL,12.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(438,9,'waterborne wash, sepia','waterborne acrylic','matte','#51402c',0.12,3.0,NULL,NULL,NULL,NULL,17.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(447,10,'matte clear, waterborne','waterborne acrylic','matte','#dfe2e2',0.35,10.0,NULL,NULL,NULL,NULL,30.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(456,11,'gloss clear, waterborne','waterborne acrylic','gloss','#e8eef0',0.35,10.0,NULL,NULL,NULL,NULL,30.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(465,12,'cyanoacrylate glue','cyanoacrylate','gloss','#f4f4f4',1.0,50.0,NULL,NULL,NULL,NULL,5.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
INSERT INTO "coating" VALUES(466,13,'water','water thinner','matte','#cfe6f2',0.35,20.0,NULL,NULL,NULL,NULL,500.0,NULL,17.0,NULL,NULL,1.0,'plain',NULL,0.0,NULL,0.0);
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
INSERT INTO "coating_recoat" VALUES(364,362,0,NULL,30,'elapsed',NULL,240,'film','none',0,0,NULL,60,'elapsed');
INSERT INTO "coating_recoat" VALUES(365,362,1,'dry-through',NULL,'elapsed',NULL,NULL,NULL,'scuff',6,0,NULL,NULL,NULL);
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
INSERT INTO "coating_time" VALUES(363,362,0,'print-free',90,'label');
INSERT INTO "coating_time" VALUES(367,366,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(368,366,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(369,366,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(370,366,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(371,366,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(372,366,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(373,366,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(374,366,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(376,375,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(377,375,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(378,375,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(379,375,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(380,375,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(381,375,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(382,375,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(383,375,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(385,384,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(386,384,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(387,384,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(388,384,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(389,384,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(390,384,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(391,384,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(392,384,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(394,393,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(395,393,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(396,393,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(397,393,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(398,393,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(399,393,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(400,393,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(401,393,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(403,402,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(404,402,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(405,402,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(406,402,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(407,402,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(408,402,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(409,402,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(410,402,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(412,411,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(413,411,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(414,411,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(415,411,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(416,411,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(417,411,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(418,411,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(419,411,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(421,420,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(422,420,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(423,420,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(424,420,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(425,420,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(426,420,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(427,420,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(428,420,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(430,429,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(431,429,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(432,429,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(433,429,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(434,429,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(435,429,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(436,429,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(437,429,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(439,438,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(440,438,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(441,438,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(442,438,3,'dry-to-handle',30,'label (invented)');
INSERT INTO "coating_time" VALUES(443,438,4,'dry-to-recoat',40,'label (invented)');
INSERT INTO "coating_time" VALUES(444,438,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(445,438,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(446,438,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(448,447,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(449,447,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(450,447,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(451,447,3,'dry-to-handle',45,'label (invented)');
INSERT INTO "coating_time" VALUES(452,447,4,'dry-to-recoat',45,'label (invented)');
INSERT INTO "coating_time" VALUES(453,447,5,'print-free',240,'label (invented)');
INSERT INTO "coating_time" VALUES(454,447,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(455,447,7,'dry-through',480,'label (invented)');
INSERT INTO "coating_time" VALUES(457,456,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(458,456,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(459,456,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(460,456,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(461,456,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(462,456,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(463,456,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(464,456,7,'dry-through',75,'label (invented)');
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
INSERT INTO "journal" VALUES(1,'2026-11-30T08:26:20+00:00','new book','created',NULL,X'789CABAE0500017500F9','','{}','e020c1fcebe36857755566b9e35c2a4a70dbfa671ae4dbc4a54b0dfda9afe153','3b7d1d0e2d33c051777e18ac2c6323285f3d1f020b1cfaf6094a429e92964e32');
INSERT INTO "journal" VALUES(2,'2026-11-30T08:32:18+00:00','upgrade to {version}','upgrade',NULL,X'789CABAE0500017500F9','','{"version": "0008"}','717ae0cc6072a77e161d39290b3d09765e3ea70b2abf7031fd7db3d812339684','9caa221cd3f11dc01f54911f2f5834374b78c77963ccdf2f298cc12f6593d7ba');
INSERT INTO "journal" VALUES(3,'2026-11-30T08:45:41+00:00','upgrade to {version}','upgrade',NULL,X'789CABAE0500017500F9','','{"version": "0009"}','6ef994c6555be33fbb92ab15bae55e2154322633b6a1004b9505fab1a339a214','baf3fcb0a1910b1ed8f797afcb411ef1b88e382ae505364d8985abfc0146bf5c');
INSERT INTO "journal" VALUES(4,'2026-11-30T08:45:41+00:00','fan','edit',NULL,X'789CED9DEB6EEB2810805FC5F2FED9D536956F71D3F31CFBEFA8B2301E272818BC801B45D579F705E25E9C4B5337674FBDD951AB2A60186606BE81248CFA1452490C134B1D7E0BBE7F7F0A0569C0BE0C39A17F77A08256B106D44DD0120EC152C136BC09C29A348C6F5D332DF9230813F4CDFD4326985EB9870D31065C95DE10437DD56FE57D49CAD2574ACE2A376C749BCE6DB952DBA266BC29BAC656C691AD32766CAFD853A80D315E31AB9030B35A8197DC30D119DFE63EF2323B457BFD4BE0E18F075BA9C0D9B813235B10AEF5AB40D1713E10943A41944BBA76728093564315FEB0952568F37EDFFC645F5BA9E1CCC84936E8EE9CE1FBB60A5AA2EC3449E1EA8514DEF637D5C5AB1027C2CED8D2176AC2355811C70C770E9F999592DD72357465AFD87B3E786DA2DF76D9D354D3AEAE4FAB9A1FAAEAE6AB95A6E0AC86E240230E449B823E2F8F46F6A5674FBAF2AA6B58C5CCB668A95374E11A325168638D291A6EAB765E969D30D626AB6512A5F12C4A6751FC57BCF81645F6F7CF28B67F9DE6A53486C3AEA35F199592AD2E5A50BBBA24BD758BD7B9F7455A348BADC0C42F722E3702B4B321BE4D5C4BA86BF09A59D30DE19C51D76E6575164B576B5F810E4A52718F9AB28D5465C9B233EB27F219508B14A8522A0101A16A6BE5DC047ACDC44DB021AA19527AD8F63CA8F47E51E77001A81ACCCC48FBDBD1BDF5B5382435F89D091748A0FA23F466BEAED24E1FC33D4EC6083184AE8F09998FD2C4F122672B222ABE2728F98CA03E2E1D069F0F0B3A150BD37C94983E88CF34A9F71D142D46493A1952EECE396818A83F1A06DE827F2610F48F86A1C0AFA2D750D0B779CB7C7C77C87CDFEC85F9BEFC96F501E82D274C0C28EF7B8C829B3D4AB5BD9C6BA821A735728D5C23D793E05AB0E5CA0425EFE072B8933C4D32841BE146B8A701B7354ABBB7CD202E877B4EF23C5D20DC0837C23D09B8ADD566052A28951DE672BE73C84842916FE41BF99E04DF1551EB239F797F86EDB4CAA22C45B6916D647B126C5BB5C5B12FB43E03F7A25C9045867023DC08F724E0E6A469832D703BCAE574D711CD33A41BE946BABF94EE0DD12BBB6F43CBC84FF82C2DCEA283F7DADE0943A8D3D14CC7E3D6C909A847617402EA64FC8A3D0EF53816DF813A43A87F29D477D384DA0319506BA872B7559EE9BD9CEAAA8604927F65ABBE42ACB39FB5578F13740AEB645C74F805586767E57C0DD7E9F002DB64B85E72F76DD7855C7B21FB77561600758447703C825FF16E3D55AAE99608E951B58E0D9607F75406CFCFB35C67EE67C0727C00F27C00F2D7CCC77C9AD3E1E3E791901A981513E22357F0690D79FD81535232854988264485351A332442CC90C00C89A96648DC46734C92C083291E4CFF679F0D639204728D5C5F31D79824817023DC570A37264920DC08F795C28D4912C837F27DBD7C639204B28D6C5F27DB9824817023DC570A37264920DD48F795D18D4912982481508F821A932430490293243049029324F0088E47F089EFD653A51A932426351D9824F165D3F0E07D2065B3DB5DB8A4FE527BBFD9BC4C101395DC049A711EEE7C6A25167604BA8B87B66E23D5BA22DBBEA3F768E8AF9EBB0E061A6B07319D02EFB2C4A9BAE7AB6CEE83D406600DA27A991FD9994A4AE5CA4675E01DFD088D8D6B6E04AF791FDC48F5FC8F315CF951F2AEB1EE4C9DE8DD72FBAF195713F121DB1E7EFC032D82D186','',NULL,'dc401bb605a58ebd2ee860759340f4e879151257abe8c2da2d8ba44b0e298828','1d5e08eecdcb20de31b2d15c30265be6caffc170375eeb793e1704ee612d8dc3');
INSERT INTO "journal" VALUES(5,'2026-11-30T09:08:20+00:00','upgrade to {version}','upgrade',NULL,X'789CABAE0500017500F9','','{"version": "0010"}','c04459a4d8be9edabd226a60ead993e9dc02a7f606bcefe130f3274f6d76c9cc','d8fb4b942a57db556b2e5addbfa6f30e736fb5f33af2fba494628bdccec528a0');
INSERT INTO "journal" VALUES(6,'2026-11-30T09:25:07+00:00','upgrade to {version}','upgrade',NULL,X'789CABAE0500017500F9','','{"version": "0011"}','27e2539a5167807488c34c3104bd3f8be690610c0dd06cf9d8320d6a718ad587','1bb44621057e58044757a8f9ff67b7346c84262b4d16ad56a1c58c8baffd23ee');
INSERT INTO "journal" VALUES(7,'2026-11-30T09:25:08+00:00','fan','edit',NULL,X'789CED9BEB6EE23814805F25CAFED9D542951B299DE7D87FA32A729213E2C1B1B3B63315AAFAEE6BBB6120054A53663BCD70545415E39C1C5FBE2F29701EFD42104DF94AF95FBCAF5F1F7D4E1A307FFA8C14FF7620BD56D206E4CC6B09036F2561E3CF3CBF220D651BDB4D09F61DB8F6FAEEEE45CAA9AAED8B0DD11A6C937A20BA704D7FE47739C973D728182DED69839B78619E97729355943559D798C630304DDA9CDB25F6E82B4DB44BCC24C4F5BC92E022379477DAF5B90B5CCC4E167DFE3930FFE9DE344AB0637C0E235AE0B6F72E20EF181B048A6DA08289626DE30023AD82D27F328D3928FDFAB1E9C9634DA38233678E92C1E17632DCB1AD849648B34C82DB762EB81BFB5E73B60B624398155BB92715610A4C886303B7133ED7B514DDAA1E4E659FD86B73B0EBA2F60F7991A92ABAAA3A9D6A7A98AA5DAF56E88CD10AB2838C1810A5B362BB3D1AD13FDBCEA47D5E770D2DA9DE646D61135DDA8E94674A9BC1640D334DCFB32C3AAECD984C96511087F3209E07E13FE1F24B1098C7DF41687EDBCC73A13583E703DDCE28A56855D6827C6E8BE21BBB79EDF4FE8816CC431330729B9C89070ECA8E21BC896C4FA82A709999A16BC2182D6CBFDAE4CC57B6D5FC05CACB49C91C6AA5E8F2BD09571AC09E7BFD2D6B04EB975B9A40B234F4599682855BEF2DC7863C90B9901C3C52C88D39DDCC536BCA67DE0391CD10E6C3BEE7792EEE96550A17F0AC40CFB5308FAE78B10D9787407B7F526E7D03E55FBE1BE66E3377EA9815C2684C104D8AF5B1208B519958ACC4BC26BC642F0245EF09D4EBEBD0516F0E744A99713A2A4CEFFAB922D5CB090A96A3229D34CFEDB9091AFAFCADB6D8F7C3195FF42F0D8DE176D1CE187D9F7D3584B7876AE8BBFD50C316E13D250C7CD03242F94006FD11631D705600F4BB909BCBD9870AD2A242F6917D647F32EC73BAAAB597B30E2E174094C65182024001A000A62300337065FF93077EB90016244DE3250A00058002988C00CCCCE81AA4974B93CAE50E48212151810E4007A00326E38092C8F591B7F3DFC37F5C26411223FFC83FF23F19FECDD0F8B1CFF3DE238065BE24CB0405800240014C46008C34ADB7016632B9DC005550A4091A000D8006F8F4067820AA36D77F6829F909EFFF854970F0BFBF9BA821F8F168EEC3717BE904F8A3503B017E347E571F077F1CAFAF809F20F81F0AFEED74C177D07A85990C69BFF1B325FC72F2CB0A2288FE974BFE6F887EF2B3AEF9E3029D423F1A67900F403F391BE7D7B01F0FBF2B3829F657CC7ED27721FB2EC8CBEFFD2C01AA006FF7F176FF37BEEA4F99FC6243B870389BC9F75607DFF519BC7E9EF72AB13F03DEC303D81703D87FCD9A2DA6BB64CEC347D4ECE99A72FE96CA8AA282B47AC31D59F419162A98185D6662B038C6C7E2182C8EF98CC531E6E863142F66581BE3E37D32DE27E3DBE2581B83EC23FBC83ED6C6A000500028801302C0DA1814000AE08A0580B531E80074C0753B006B63907FE4FF7AF9C7DA1814000AE08A0580B531680034C0151A006B63B03606C11F053ED6C6606DCC65E8636D0CD6C67C38FB581B83B7FB78D5BF46F2B13666724B86B5319F7AA9EEEF9FFE03F4CD89C2','',NULL,'50454ca437b45b2d7dae0fe13dca9665b40d089517ea88d01630b7cd7b4bcbcb','76ee8619f90e7841aaaaf3584659f947e7e8c50e0b9cdc6e54de07016570577b');
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
	drying_places INTEGER NOT NULL, outdoors BOOLEAN DEFAULT 0 NOT NULL, movement TEXT DEFAULT 'room' NOT NULL, 
	CONSTRAINT pk_location PRIMARY KEY (id), 
	CONSTRAINT fk_location_parent FOREIGN KEY(parent) REFERENCES room (id) ON DELETE CASCADE
);
INSERT INTO "location" VALUES(360,359,0,'window sill',3,1,'fan');
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
INSERT INTO "location_workday" VALUES(361,360,0,'00:00',21.0,45.0);
CREATE TABLE log_photo (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_log_photo PRIMARY KEY (id), 
	CONSTRAINT fk_log_photo_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_photo" VALUES(168,165,0,'0f3a.jpg');
CREATE TABLE log_ticked (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_log_ticked PRIMARY KEY (id), 
	CONSTRAINT fk_log_ticked_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_ticked" VALUES(167,165,0,'figure/face and hands');
CREATE TABLE log_used (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	ml FLOAT NOT NULL, 
	CONSTRAINT pk_log_used PRIMARY KEY (id), 
	CONSTRAINT fk_log_used_parent FOREIGN KEY(parent) REFERENCES project_log (id) ON DELETE CASCADE
);
INSERT INTO "log_used" VALUES(166,165,0,'lacquer primer, pale grey',1.25);
CREATE TABLE made_colour (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	colour TEXT NOT NULL, 
	coating TEXT NOT NULL, 
	CONSTRAINT pk_made_colour PRIMARY KEY (id), 
	CONSTRAINT fk_made_colour_parent FOREIGN KEY(parent) REFERENCES model_made (id) ON DELETE CASCADE
);
INSERT INTO "made_colour" VALUES(253,251,0,'base','waterborne acrylic, skin, warm');
CREATE TABLE made_option (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_made_option PRIMARY KEY (id), 
	CONSTRAINT fk_made_option_parent FOREIGN KEY(parent) REFERENCES model_made (id) ON DELETE CASCADE
);
INSERT INTO "made_option" VALUES(252,251,0,'pigments');
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
INSERT INTO "measure" VALUES(172,171,0,'cylinder',20.0,8.5,0.0,4);
CREATE TABLE meta (
	name TEXT NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_meta PRIMARY KEY (name)
);
INSERT INTO "meta" VALUES('last_id','466');
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
	scale TEXT NOT NULL, real_size_length_m FLOAT, real_size_width_m FLOAT, real_size_height_m FLOAT, target TEXT, weight INTEGER DEFAULT '1' NOT NULL, early BOOLEAN DEFAULT '0' NOT NULL, 
	CONSTRAINT pk_model PRIMARY KEY (id), 
	CONSTRAINT fk_model_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "model" VALUES(169,1,0,'Lamplighter with a pole','1:35',4.2,1.8,1.9,NULL,1,0);
CREATE TABLE model_made (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	sequence TEXT NOT NULL, 
	CONSTRAINT pk_model_made PRIMARY KEY (id), 
	CONSTRAINT fk_model_made_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "model_made" VALUES(251,169,0,'house order');
CREATE TABLE pace (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_pace PRIMARY KEY (id)
);
INSERT INTO "pace" VALUES(161,0);
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
INSERT INTO "pace_learned" VALUES(162,161,0,'base','airbrush',1.4,'2031-03-01T00:00:00+01:00');
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
INSERT INTO "part" VALUES(170,169,0,'figure','cork with a pin',1,'hard styrene',0);
INSERT INTO "part" VALUES(179,169,1,'plinth','bottle cap',1,'hard styrene',0);
CREATE TABLE place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	side TEXT NOT NULL, 
	area_cm2 FLOAT NOT NULL, detail FLOAT DEFAULT '1' NOT NULL, 
	CONSTRAINT pk_place PRIMARY KEY (id), 
	CONSTRAINT fk_place_parent FOREIGN KEY(parent) REFERENCES part (id) ON DELETE CASCADE
);
INSERT INTO "place" VALUES(171,170,0,'face and hands','top',3.0,1.3);
INSERT INTO "place" VALUES(173,170,1,'coat','top',14.0,1.0);
INSERT INTO "place" VALUES(174,170,2,'trousers','top',6.0,1.0);
INSERT INTO "place" VALUES(175,170,3,'boots and satchel','top',5.0,1.0);
INSERT INTO "place" VALUES(176,170,4,'pole and lantern','top',4.0,1.0);
INSERT INTO "place" VALUES(177,170,5,'lantern glass','top',0.5,1.0);
INSERT INTO "place" VALUES(178,170,6,'soles','under',0.5,1.0);
INSERT INTO "place" VALUES(180,179,0,'cobbles','top',12.0,1.0);
INSERT INTO "place" VALUES(181,179,1,'rim','top',10.0,1.0);
INSERT INTO "place" VALUES(182,179,2,'standing spots','top',0.5,1.0);
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
INSERT INTO "preference_likely" VALUES(1,155,0,'another coat');
INSERT INTO "preference_likely" VALUES(2,155,1,'a wash');
INSERT INTO "preference_likely" VALUES(3,155,2,'decals');
INSERT INTO "preference_likely" VALUES(4,155,3,'a clear coat');
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
INSERT INTO "project_log" VALUES(165,1,0,'Lamplighter with a pole','prime',1,'2031-03-04T19:00:00+01:00','2031-03-04T19:12:00+01:00',14,12,'both sides',17.5,61.0,'airbrush');
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
INSERT INTO "room" VALUES(359,0,40.0);
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
INSERT INTO "step" VALUES(183,169,0,'prime','prime','Prime figure and plinth in thin passes from all sides','airbrush',2,3,NULL,NULL,0,'',0,NULL,2,30);
INSERT INTO "step" VALUES(195,169,1,'skin','base','Face and hands','brush',8,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(198,169,2,'coat','base','The long coat, night blue','brush',10,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(201,169,3,'trousers','base','Trousers, moss green','brush',7,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(204,169,4,'leather','detail','Boots and satchel','brush',8,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(207,169,5,'pole','detail','Lamp pole and lantern frame, dark grey','brush',6,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(210,169,6,'cobbles','base','Stone grey on the cobbles','brush',6,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(213,169,7,'rim','base','Dark grey round the rim of the plinth','brush',4,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(216,169,8,'sepia','wash','Sepia wash into folds, fingers and between the cobbles','brush',4,5,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(223,169,9,'coat-light','highlight','Upper folds of the coat, two parts ivory to three of blue','brush',14,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(226,169,10,'skin-light','highlight','Nose, cheeks and knuckles','brush',10,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(229,169,11,'dry-brush','dry-brush','Dry-brush ivory over cobbles','brush',5,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(232,169,12,'glass','detail','Lamp yellow in the lantern','brush',4,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(235,169,13,'join','join','Glue the figure on the plinth','hand',5,0,NULL,NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(239,169,14,'matte','matte','Matte clear over everything','airbrush',2,3,'final',NULL,0,'',0,NULL,0,NULL);
INSERT INTO "step" VALUES(248,169,15,'glass-shine','varnish','A drop of gloss on the lantern glass','brush',3,0,NULL,NULL,0,'',0,NULL,0,NULL);
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
INSERT INTO "step_trait" VALUES(193,183,0,'smells');
INSERT INTO "step_trait" VALUES(194,183,1,'noisy');
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
COMMIT;
